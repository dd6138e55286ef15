package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.BitSet;

/**
 * The climate inside bags: estimated from the house, measured where a sensor was lent.
 *
 * <p>Estimates follow a well-mixed balance ({@link BagBalance}); the intervals hold the spread of every parameter, the
 * error of the house sensor and what the balance leaves unexplained. They stand for one cell each, not for a whole night
 * at once.
 */
public final class BagClimates {
    /** From this humidity on, %RH, a sensor's own reading stands for water on the film. */
    private static final double WET = 95;

    private BagClimates() {}

    /**
     * The estimate from the priors of a material.
     *
     * @see #estimate(Climate, BagBelief, Instant, Sky)
     */
    public static BagClimate estimate(Climate house, BagMaterial material, Instant putOn, Sky sky) {
        return estimate(house, BagBelief.prior(material), putOn, sky);
    }

    /**
     * Estimates the climate inside a bag.
     *
     * @param house climate of its bay or house up to when the bag came off, on any step
     * @param belief what is believed of the bag
     * @param putOn when it was put on; cells that end before are unknown, the first one starts at the steady state
     * @param sky asked for where the house has no light reading
     * @return the climate on the grid of the house. Where the house is unknown the bag is unknown, and starts again at
     *     the steady state after it; without house humidity only the temperature is known
     */
    public static BagClimate estimate(Climate house, BagBelief belief, Instant putOn, Sky sky) {
        BagEstimate estimate = new BagEstimate(house, belief, sky, SensorError.USUAL);
        TimeGrid grid = house.grid();
        int first = Math.max(0, Math.min(grid.size(), grid.indexOf(putOn)));
        return estimate.from(first);
    }

    /**
     * Puts what a lent sensor measured in place of the estimate.
     *
     * @param estimate the estimate of the same bag
     * @param measured what the sensor said, on the same grid, unknown where it was not lent or not heard
     * @return cells in which temperature and humidity were heard become measured, with the interval of the sensor's
     *     error; water on the film is likely there from 95 %RH on, certain or possible at the ends of an 80 % interval
     */
    public static BagClimate withMeasured(BagClimate estimate, Climate measured) {
        TimeGrid grid = estimate.grid();
        double[] temperature = measured.temperature().toArray();
        double[] humidity = measured.humidity().toArray();
        BandArrays warm = new BandArrays(estimate.temperature());
        BandArrays damp = new BandArrays(estimate.humidity());
        BitSet heard = estimate.measured();
        BitSet certain = estimate.film().certain();
        BitSet likely = estimate.film().likely();
        BitSet possible = estimate.film().possible();
        for (int i = 0; i < grid.size(); i++) {
            if (!Double.isNaN(temperature[i]) && !Double.isNaN(humidity[i])) {
                warm.set(i, temperature[i], Coverage.NINETY.deviations() * SensorError.USUAL.temperature());
                double reach = Coverage.NINETY.deviations() * SensorError.USUAL.humidityAt(humidity[i]);
                damp.set(i, humidity[i], reach);
                heard.set(i);
                certain.set(i, humidity[i] - FilmDoubt.NARROWER * reach >= WET);
                likely.set(i, humidity[i] >= WET);
                possible.set(i, humidity[i] + FilmDoubt.NARROWER * reach >= WET);
            }
        }
        FilmWetness film = new FilmWetness(certain, likely, possible);
        return new BagClimate(
                warm.banded(grid, Coverage.NINETY), damp.clamped(0, 100).banded(grid, Coverage.NINETY), heard, film);
    }

    /** A measured climate in which nothing was heard, on a grid. */
    public static Climate nothingMeasured(TimeGrid grid) {
        RegularSeries unknown = RegularSeries.unknown(grid);
        return new Climate(unknown, unknown, unknown);
    }
}
