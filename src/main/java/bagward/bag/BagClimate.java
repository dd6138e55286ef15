package bagward.bag;

import bagward.climate.RegularSeries;
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

    /**
     * The climate as a quantile of the estimate has it, without doubt: for who acts on that. Measured cells keep their best
     * value. Water on the film is told at three levels; it is taken from the highest one that is not above the quantile,
     * or from the certain one.
     */
    public BagClimate at(Quantile quantile) {
        if (quantile.equals(Quantile.MIDDLE)) {
            return this;
        }
        BitSet wet = quantile.share() < Quantile.MIDDLE.share()
                ? film.certain()
                : quantile.share() < Quantile.POSSIBLE.share() ? film.likely() : film.possible();
        BitSet likely = film.likely();
        likely.and(measured);
        wet.andNot(measured);
        wet.or(likely);
        RegularSeries warm = temperature.at(quantile, measured);
        RegularSeries damp = humidity.at(quantile, measured);
        return new BagClimate(new Banded(warm, warm, warm), new Banded(damp, damp, damp), measured, wet);
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
