package bagward.bag;

import java.util.Arrays;

/**
 * Simple ways to foretell a night, none of which is right in every house: the past nights with weights that fade fast or
 * slowly with age, plus how far this evening departs from those evenings, fading fast or slowly through the night.
 * Confined to one outlook.
 */
final class NightExperts {
    /** Weight of a night against the one after it. */
    private static final double[] FADING = {0.7, 0.85, 0.95};

    /** Hours in which the departure of the evening halves; 0 leaves it out. */
    private static final double[] DEPARTURE_HALVES = {0, 1, 2, 4, 8, 24};

    /** Nights that an expert must know before it speaks. */
    private static final int FEWEST = 3;

    private final NightTable table;
    private final double[][][] means;

    NightExperts(NightTable table) {
        this.table = table;
        this.means = new double[FADING.length][table.nights() + 1][];
        for (int fading = 0; fading < FADING.length; fading++) {
            for (int night = 0; night <= table.nights(); night++) {
                means[fading][night] = faded(FADING[fading], night);
            }
        }
    }

    static int count() {
        return FADING.length * DEPARTURE_HALVES.length;
    }

    /**
     * What an expert says, or would have said, of a night from the nights before it.
     *
     * @return value of each hour from 1 (index 0 is hour 1), NaN where it knows fewer than three nights
     */
    double[] says(int expert, int night) {
        double[] mean = means[expert / DEPARTURE_HALVES.length][night];
        double half = DEPARTURE_HALVES[expert % DEPARTURE_HALVES.length];
        double departure = half > 0 ? table.values()[night][0] - mean[0] : 0;
        double[] said = new double[table.hours()];
        for (int hour = 1; hour <= said.length; hour++) {
            double left = half > 0 && !Double.isNaN(departure) ? departure * Math.pow(0.5, hour / half) : 0;
            said[hour - 1] = mean[hour] + left;
        }
        return said;
    }

    /** The mean of the last three nights, the yardstick. */
    double[] threeNights(int night) {
        double[] sums = new double[table.hours()];
        int last = Math.min(night + FEWEST, table.nights());
        for (int hour = 1; hour <= sums.length; hour++) {
            int known = 0;
            for (int past = night + 1; past <= last; past++) {
                double value = table.values()[past][hour];
                if (!Double.isNaN(value)) {
                    sums[hour - 1] += value;
                    known++;
                }
            }
            sums[hour - 1] = known > 0 ? sums[hour - 1] / known : Double.NaN;
        }
        return sums;
    }

    private double[] faded(double fading, int night) {
        double[] sums = new double[table.hours() + 1];
        Arrays.setAll(sums, hour -> fadedHour(fading, night, hour));
        return sums;
    }

    private double fadedHour(double fading, int night, int hour) {
        double sum = 0;
        double weights = 0;
        double weight = 1;
        int known = 0;
        for (int past = night + 1; past <= table.nights(); past++) {
            double value = table.values()[past][hour];
            if (!Double.isNaN(value)) {
                sum += weight * value;
                weights += weight;
                known++;
            }
            weight *= fading;
        }
        return known < FEWEST ? Double.NaN : sum / weights;
    }
}
