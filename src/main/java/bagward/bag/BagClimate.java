package bagward.bag;

import bagward.climate.TimeGrid;
import java.util.BitSet;

/**
 * The climate inside one bag while it was on.
 *
 * @param temperature °C
 * @param humidity %RH
 * @param measured cells in which a lent sensor was heard; all others are estimated
 * @param film cells in which water on the film is likely (film at or below the dew point)
 */
public record BagClimate(Banded temperature, Banded humidity, BitSet measured, BitSet film) {
    /** Copies the bit sets. */
    public BagClimate {
        measured = (BitSet) measured.clone();
        film = (BitSet) film.clone();
    }

    @Override
    public BitSet measured() {
        return (BitSet) measured.clone();
    }

    @Override
    public BitSet film() {
        return (BitSet) film.clone();
    }

    /** The grid of all parts. */
    public TimeGrid grid() {
        return temperature.middle().grid();
    }

    /** Where cell i comes from. */
    public Origin originAt(int i) {
        return measured.get(i) ? Origin.MEASURED : Origin.ESTIMATED;
    }

    /** Whether water on the film is likely in cell i. */
    public boolean filmWetAt(int i) {
        return film.get(i);
    }
}
