package bagward.bag;

import java.util.BitSet;

/**
 * What a bag taught of its own closure up to an hour, beside what is believed of its material: two coefficients, by day
 * and by night, with the doubt about both.
 *
 * @param byDay closure by day, 0 to 1
 * @param byNight closure by night, 0 to 1
 * @param dayVariance variance of the first
 * @param nightVariance variance of the second
 * @param covariance of both
 */
record OwnClosure(double byDay, double byNight, double dayVariance, double nightVariance, double covariance) {
    /** Closure at a share of day. */
    double at(double day) {
        return byNight + (byDay - byNight) * day;
    }

    /** Covariance of the closures at two shares of day. */
    double covariance(double one, double other) {
        return dayVariance * one * other
                + nightVariance * (1 - one) * (1 - other)
                + covariance * (one * (1 - other) + other * (1 - one));
    }

    /** Running sums over the hours of a bag, from which the closure up to any hour follows at once. */
    static final class Sums {
        /** After so many hours an hour counts half: a head grows and wilts. A prior. */
        private static final double HALF_LIFE_HOURS = 72;

        /** Hourly scatter about the closure, %RH, and how much longer than an hour it lasts. Priors. */
        private static final double NOISE = 1.5;

        private static final double KINSHIP = 4;

        private final BagBelief material;
        private final double[][] sums;

        /**
         * @param hours the bag by the hour
         * @param material what is believed of a bag of its material
         * @param counted hours that count
         */
        Sums(VapourHours hours, BagBelief material, BitSet counted) {
            this.material = material;
            this.sums = new double[hours.count() + 1][5];
            for (int i = 0; i < hours.count(); i++) {
                sums[i + 1] = sums[i].clone();
                if (hours.known(i) && counted.get(i)) {
                    double weight = Math.pow(2, i / HALF_LIFE_HOURS);
                    double byDay = hours.room()[i] * hours.day()[i];
                    double byNight = hours.room()[i] * (1 - hours.day()[i]);
                    sums[i + 1][0] += weight * byDay * byDay;
                    sums[i + 1][1] += weight * byDay * byNight;
                    sums[i + 1][2] += weight * byNight * byNight;
                    sums[i + 1][3] += weight * byDay * hours.held()[i];
                    sums[i + 1][4] += weight * byNight * hours.held()[i];
                }
            }
        }

        /** The closure as the hours before one taught it. */
        OwnClosure before(int hour) {
            double[] s = sums[Math.max(0, Math.min(sums.length - 1, hour))];
            double scale = Math.pow(2, -hour / HALF_LIFE_HOURS);
            double day = precision(material.closureByDay());
            double night = precision(material.closureByNight());
            double a = s[0] * scale + day;
            double b = s[1] * scale;
            double c = s[2] * scale + night;
            double u = s[3] * scale + day * material.closureByDay().mean();
            double v = s[4] * scale + night * material.closureByNight().mean();
            double determinant = a * c - b * b;
            double noise = NOISE * NOISE * KINSHIP / determinant;
            return new OwnClosure(
                    share((c * u - b * v) / determinant),
                    share((a * v - b * u) / determinant),
                    noise * c,
                    noise * a,
                    -noise * b);
        }

        private static double precision(Spread closure) {
            double doubt = Math.max(0.02, closure.deviation());
            return KINSHIP * NOISE * NOISE / (doubt * doubt);
        }

        private static double share(double closure) {
            return Math.max(0, Math.min(1, closure));
        }
    }
}
