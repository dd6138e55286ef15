package bagward.site.chart;

import bagward.bag.BagOutlook;
import bagward.bag.Banded;
import bagward.bag.Outlook;
import bagward.climate.RegularSeries;
import java.time.Instant;
import java.util.BitSet;

/**
 * An outlook as a chart and a table show it, by the hour.
 *
 * @param name "house" or "bag"
 * @param temperature °C
 * @param humidity %RH
 * @param film hours with water on the film likely; none for a house
 * @param light of the last nights at each hour, µmol m⁻² s⁻¹
 */
public record NightLines(String name, Banded temperature, Banded humidity, BitSet film, RegularSeries light) {
    /** Copies the hours. */
    public NightLines {
        film = (BitSet) film.clone();
    }

    /** The outlook of a house. */
    public static NightLines of(Outlook.Night house) {
        return new NightLines(
                "house",
                house.temperature(),
                house.humidity(),
                new BitSet(),
                house.expected().light());
    }

    /** The outlook of a bag under that of its house. */
    public static NightLines of(BagOutlook bag, Outlook.Night house) {
        return new NightLines(
                "bag",
                bag.climate().temperature(),
                bag.climate().humidity(),
                bag.climate().film().likely(),
                house.expected().light());
    }

    @Override
    public BitSet film() {
        return (BitSet) film.clone();
    }

    Instant from() {
        return humidity.middle().grid().start();
    }

    Instant to() {
        return humidity.middle().grid().end();
    }
}
