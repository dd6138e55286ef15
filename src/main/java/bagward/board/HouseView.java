package bagward.board;

import bagward.bag.Outlook;
import bagward.mould.NightRule;
import bagward.station.House;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A house on the board.
 *
 * @param house the house and its bays
 * @param temperature newest house temperature, °C
 * @param humidity newest house humidity, %RH
 * @param light newest light, µmol m⁻² s⁻¹
 * @param newestReading when its newest reading was measured
 * @param temperatureDay the last 24 h in equal steps, oldest first, NaN for gaps, °C
 * @param humidityDay the same for humidity, %RH
 * @param tonight what is to be expected until the next morning, or why nothing can be said
 * @param week whether the last week favoured grey mould; empty if nobody looked
 */
public record HouseView(
        House house,
        Optional<Measure> temperature,
        Optional<Measure> humidity,
        Optional<Measure> light,
        Optional<Instant> newestReading,
        List<Double> temperatureDay,
        List<Double> humidityDay,
        Outlook tonight,
        Optional<NightRule.Verdict> week) {
    /** Copies the lists. */
    public HouseView {
        temperatureDay = List.copyOf(temperatureDay);
        humidityDay = List.copyOf(humidityDay);
    }

    /** A house without an outlook. */
    public HouseView(
            House house,
            Optional<Measure> temperature,
            Optional<Measure> humidity,
            Optional<Measure> light,
            Optional<Instant> newestReading,
            List<Double> temperatureDay,
            List<Double> humidityDay) {
        this(
                house,
                temperature,
                humidity,
                light,
                newestReading,
                temperatureDay,
                humidityDay,
                new Outlook.None(newestReading.orElse(Instant.EPOCH), "No outlook was made for this house."),
                Optional.empty());
    }
}
