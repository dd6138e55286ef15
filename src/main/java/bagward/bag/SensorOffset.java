package bagward.bag;

import bagward.climate.Climate;
import java.util.Arrays;

/**
 * What a spare sensor says more than the house sensor in the same air.
 *
 * @param temperature K, with its standard error
 * @param humidity %RH, with its standard error
 */
public record SensorOffset(Spread temperature, Spread humidity) {
    /** Two sensors that never hung side by side: offsets of 0.2 K and 1.5 %RH each (priors), so √2 times that apart. */
    public static final SensorOffset UNKNOWN = new SensorOffset(new Spread(0, 0.28), new Spread(0, 2.1));

    /** Cells in the dark that are enough, as hours. */
    private static final double ENOUGH_HOURS = 4;

    /** What is left after a side-by-side night: position, drift. Priors. */
    private static final Spread LEFT = new Spread(0.1, 0.5);

    /** Sensors side by side do not lie further apart than four deviations of {@link #UNKNOWN}... */
    private static final double FURTHEST = 4;

    /** ...and go up and down together: half of the differences lie this near to their median, K and %RH. Priors. */
    private static final Spread TOGETHER = new Spread(0.3, 2);

    /**
     * The offset from a time in which both may have hung side by side; only dark cells count, since the sun warms each
     * sensor differently.
     *
     * @param house the house sensor
     * @param spare the spare one on the same grid
     * @return the medians of the differences; {@link #UNKNOWN} with less than 4 h in the dark, or if the two were not in the
     *     same air: far apart, or not going up and down together
     */
    public static SensorOffset sideBySide(Climate house, Climate spare) {
        int size = house.grid().size();
        double[] warmer = new double[size];
        double[] damper = new double[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            double temperature =
                    spare.temperature().valueOrNaN(i) - house.temperature().valueOrNaN(i);
            double humidity = spare.humidity().valueOrNaN(i) - house.humidity().valueOrNaN(i);
            boolean dark = Daylight.global(house.light().valueOrNaN(i)) < 1;
            if (dark && !Double.isNaN(temperature) && !Double.isNaN(humidity)) {
                warmer[count] = temperature;
                damper[count] = humidity;
                count++;
            }
        }
        if (count * house.grid().step().toSeconds() < ENOUGH_HOURS * 3600) {
            return UNKNOWN;
        }
        double warm = median(warmer, count);
        double damp = median(damper, count);
        boolean near = Math.abs(warm) <= FURTHEST * UNKNOWN.temperature.deviation()
                && Math.abs(damp) <= FURTHEST * UNKNOWN.humidity.deviation();
        boolean together =
                stray(warmer, count, warm) <= TOGETHER.mean() && stray(damper, count, damp) <= TOGETHER.deviation();
        return near && together
                ? new SensorOffset(new Spread(warm, LEFT.mean()), new Spread(damp, LEFT.deviation()))
                : UNKNOWN;
    }

    /** Median distance from the median. */
    private static double stray(double[] values, int count, double median) {
        double[] distances = new double[count];
        for (int i = 0; i < count; i++) {
            distances[i] = Math.abs(values[i] - median);
        }
        return median(distances, count);
    }

    private static double median(double[] values, int count) {
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        return (sorted[(count - 1) / 2] + sorted[count / 2]) / 2;
    }
}
