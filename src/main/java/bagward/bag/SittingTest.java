package bagward.bag;

import java.util.stream.IntStream;

/**
 * How much likelier it is that a bag has sat otherwise since some hour than that it goes on as it taught: the logarithm of
 * the ratio, over some hours before and all hours since. Errors of hours near each other are akin; they are larger by day,
 * and the doubt about what the bag taught is among them. What sensors lie apart is allowed for. Used for one bag by one thread.
 */
final class SittingTest {
    /** Hours before the change that are looked at too: an error that was there before it is no sign of it. */
    private static final int BEFORE = 8;

    /**
     * Scatter of an hour of a usual bag that lasts, by night and by day, %RH; how much of it is left an hour later; what does
     * not last. Of the size that bags of the test simulator show about their own fit; a bag that is more restless is judged
     * by its own scatter.
     */
    private static final double LASTING_BY_NIGHT = 0.7;

    private static final double LASTING_BY_DAY = 1.2;
    private static final double LEFT_AN_HOUR_LATER = 0.75;
    private static final double PASSING_BY_NIGHT = 0.6;
    private static final double PASSING_BY_DAY = 1.4;

    /** An hour further off than so many deviations counts no more than that. */
    private static final double CUT = 3;

    /** Air in a bag does not read nearer to saturation than this, %RH. */
    private static final double NEAREST = 0.3;

    private final VapourHours hours;
    private final double[] closures;
    private final double[] left;

    /** @param closures what the bag would hold if it sat otherwise: near 1 shut, near 0 off */
    SittingTest(VapourHours hours, double... closures) {
        this.hours = hours;
        this.closures = closures;
        this.left = IntStream.rangeClosed(0, hours.count())
                .mapToDouble(apart -> Math.pow(LEFT_AN_HOUR_LATER, apart))
                .toArray();
    }

    /**
     * The logarithm of the ratio, for each of the closures.
     *
     * @param taught what the bag taught before the change
     * @param change first hour of the change
     * @param now first hour that is not yet known
     */
    double[] evidence(OwnClosure taught, int change, int now) {
        int[] which = known(Math.max(0, change - BEFORE), now);
        double[][] errors = new double[which.length][which.length];
        double[] deviations = new double[which.length];
        for (int i = 0; i < which.length; i++) {
            for (int k = 0; k <= i; k++) {
                errors[i][k] = error(taught, which[i], which[k]);
            }
            deviations[i] = Math.sqrt(errors[i][i]);
        }
        PositiveSystem.factor(errors);
        double[] evidence = new double[closures.length];
        for (int one = 0; one < closures.length; one++) {
            evidence[one] = evidence(closures[one], taught, change, which, deviations, errors);
        }
        return evidence;
    }

    private double evidence(
            double closure, OwnClosure taught, int change, int[] which, double[] deviations, double[][] factor) {
        double[] signal = new double[which.length];
        double[] off = new double[which.length];
        for (int i = 0; i < which.length; i++) {
            int hour = which[i];
            double expected = capped(taught.at(hours.day()[hour]), hour);
            signal[i] = hour < change ? 0 : signal(closure, expected, hour);
            double most = Math.max(0, signal[i]) + CUT * deviations[i];
            double least = Math.min(0, signal[i]) - CUT * deviations[i];
            off[i] = Math.max(least, Math.min(most, hours.held()[hour] - taught.offset() - expected));
        }
        double[] weights = PositiveSystem.solveFactored(factor, signal);
        double evidence = 0;
        for (int i = 0; i < which.length; i++) {
            evidence += weights[i] * (off[i] - signal[i] / 2);
        }
        return evidence;
    }

    private double signal(double closure, double expected, int hour) {
        double otherwise = capped(closure, hour);
        return closure > 0.5 ? Math.max(0, otherwise - expected) : Math.min(0, otherwise - expected);
    }

    private double capped(double share, int hour) {
        return Math.min(share * hours.room()[hour], hours.room()[hour] - NEAREST);
    }

    private double error(OwnClosure taught, int one, int other) {
        double day = hours.day()[one];
        double otherDay = hours.day()[other];
        double lasting = lasting(day) * lasting(otherDay) * left[one - other];
        double doubt = taught.covariance(day, hours.room()[one], otherDay, hours.room()[other]);
        double passing = one == other ? passing(day) * passing(day) : 0;
        return (lasting + doubt + passing) * taught.restlessness();
    }

    private static double passing(double day) {
        return PASSING_BY_NIGHT + (PASSING_BY_DAY - PASSING_BY_NIGHT) * day;
    }

    private static double lasting(double day) {
        return LASTING_BY_NIGHT + (LASTING_BY_DAY - LASTING_BY_NIGHT) * day;
    }

    private int[] known(int from, int to) {
        return IntStream.range(from, to).filter(hours::known).toArray();
    }
}
