package bagward.bag;

import java.util.BitSet;

/**
 * Running sums over the hours of a bag, from which what it taught up to any hour ({@link OwnClosure}) follows at once: least
 * squares of what is held back on the room there is, with what is believed of the material as prior. Older hours count less.
 */
final class OwnSums {
    /** After so many hours an hour counts half: a head grows and wilts. A prior. */
    private static final double HALF_LIFE_HOURS = 72;

    /**
     * Usual scatter of an hour by night and by day, %RH, and how much longer than an hour it lasts: of the size that bags of
     * the test simulator show about their own fit (0.8 and 1.8).
     */
    private static final double BY_NIGHT = 0.9;

    private static final double BY_DAY = 1.8;
    private static final double KINSHIP = 4;

    /** The usual scatter counts as much as so many hours of the bag's own. A prior. */
    private static final double USUAL_HOURS = 24;

    /** A bag is not believed to be more restful than that. A prior. */
    private static final double LEAST_RESTLESS = 0.3;

    /** A closure is not believed to be surer than that, whatever the material taught. */
    private static final double LEAST_DOUBT = 0.02;

    private final double[] priorMeans;
    private final double[] priorPrecisions;
    private final Sum[] sums;

    /**
     * @param hours the bag by the hour
     * @param material what is believed of a bag of its material
     * @param counted hours that count
     */
    OwnSums(VapourHours hours, BagBelief material, BitSet counted) {
        this.priorMeans = new double[] {
            material.closureByDay().mean(), material.closureByNight().mean(), 0
        };
        this.priorPrecisions = new double[] {
            precision(material.closureByDay().deviation()),
            precision(material.closureByNight().deviation()),
            precision(SensorOffset.UNKNOWN.humidity().deviation())
        };
        this.sums = new Sum[hours.count() + 1];
        sums[0] = new Sum();
        for (int i = 0; i < hours.count(); i++) {
            sums[i + 1] = sums[i];
            if (hours.known(i) && counted.get(i)) {
                sums[i + 1] = sums[i].with(hours, i);
            }
        }
    }

    /** What the hours before one taught. */
    OwnClosure before(int hour) {
        Sum sum = sums[Math.max(0, Math.min(sums.length - 1, hour))];
        double scale = Math.pow(2, -hour / HALF_LIFE_HOURS);
        double[][] matrix = new double[OwnClosure.SIZE][OwnClosure.SIZE];
        double[] right = new double[OwnClosure.SIZE];
        for (int i = 0; i < right.length; i++) {
            for (int k = 0; k < right.length; k++) {
                matrix[i][k] = sum.squares[i][k] * scale;
            }
            matrix[i][i] += priorPrecisions[i];
            right[i] = sum.products[i] * scale + priorPrecisions[i] * priorMeans[i];
        }
        double[][] covariance = PositiveSystem.inverse(matrix);
        double[] values = PositiveSystem.solve(matrix, right);
        double restlessness = (USUAL_HOURS + KINSHIP * scale * sum.rest(values)) / (USUAL_HOURS + scale * sum.hours);
        return new OwnClosure(values, covariance, Math.max(LEAST_RESTLESS, restlessness));
    }

    private static double precision(double deviation) {
        double doubt = Math.max(LEAST_DOUBT, deviation);
        return 1 / (doubt * doubt);
    }

    /** Sums up to an hour; those of later hours weigh more, and {@link #before} scales that back. */
    private static final class Sum {
        private final double[][] squares = new double[OwnClosure.SIZE][OwnClosure.SIZE];
        private final double[] products = new double[OwnClosure.SIZE];
        private double held;
        private double hours;

        private Sum with(VapourHours all, int hour) {
            double day = all.day()[hour];
            double scatter = BY_NIGHT + (BY_DAY - BY_NIGHT) * day;
            double newer = Math.pow(2, hour / HALF_LIFE_HOURS);
            double weight = newer / (scatter * scatter * KINSHIP);
            double[] row = OwnClosure.row(day, all.room()[hour]);
            Sum next = new Sum();
            for (int i = 0; i < row.length; i++) {
                for (int k = 0; k < row.length; k++) {
                    next.squares[i][k] = squares[i][k] + weight * row[i] * row[k];
                }
                next.products[i] = products[i] + weight * row[i] * all.held()[hour];
            }
            next.held = held + weight * all.held()[hour] * all.held()[hour];
            next.hours = hours + newer;
            return next;
        }

        /** Weighted squares of what coefficients leave unexplained. */
        private double rest(double[] values) {
            double rest = held;
            for (int i = 0; i < values.length; i++) {
                rest -= 2 * values[i] * products[i];
                for (int k = 0; k < values.length; k++) {
                    rest += values[i] * squares[i][k] * values[k];
                }
            }
            return Math.max(0, rest);
        }
    }
}
