package bagward.bag;

import bagward.climate.TimeGrid;
import java.util.BitSet;

/**
 * The climate inside one bag while it was on.
 *
 * @param temperature °C
 * @param humidity %RH
 * @param measured cells in which a lent sensor was heard; all others are estimated
 * @param film cells with water on the film (film at or below the dew point), and how sure that is
 */
public record BagClimate(Banded temperature, Banded humidity, BitSet measured, FilmWetness film) {
    /** Copies the bit set. */
    public BagClimate {
        measured = (BitSet) measured.clone();
    }

    /** A climate without doubt about the film. */
    public BagClimate(Banded temperature, Banded humidity, BitSet measured, BitSet film) {
        this(temperature, humidity, measured, FilmWetness.sure(film));
    }

    @Override
    public BitSet measured() {
        return (BitSet) measured.clone();
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
        return film.likelyAt(i);
    }
}
