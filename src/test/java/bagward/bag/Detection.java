package bagward.bag;

import bagward.climate.Climate;

/**
 * How well bags that fall shut are found in simulated seasons: two bags a season sit well for a week, two fall shut at a
 * random minute after the first day.
 *
 * <p>What could be found is told from a twin of each season in which the bag does not fall shut: by how much the true humidity
 * of the six hours differs, and whether one could find it who knows all about bag, house and weather and has only the noise of
 * the sensor against him.
 *
 * <p>The main method runs the 120 seasons from 60000 on, or from a number that is given, and tells by the hour of day at which
 * the bags fell shut. The check was tuned on seasons from 10000 to 59999.
 */
final class Detection {
    private static final int NEVER = Integer.MAX_VALUE;
    private static final int WITHIN_HOURS = 6;

    /** A bag whose true humidity rises by so much within 6 h tells that it fell shut, %RH. */
    private static final double TELLS = 5;

    /** Noise of a reading, %RH, and how many deviations it takes to be sure among some 2000 looks a week. */
    private static final double NOISE = 1;

    private static final double SURE = 4.5;

    /** True differences by which misses are told apart, %RH. */
    private static final double[] CHANGES = {1, 2, 5};

    private final BagBelief material;
    private final int[] missedBelow = new int[CHANGES.length];
    private final int[] shutBelow = new int[CHANGES.length];
    private int couldBeFound;
    private int falseOff;
    private final int[] shut = new int[24];
    private final int[] foundAt = new int[24];
    private int telling;
    private int foundOfTelling;
    private int foundWithinDay;
    private int falseCalls;
    private int weeks;

    Detection(BagBelief material) {
        this.material = material;
    }

    /** Runs the whole study. */
    public static void main(String[] arguments) {
        Detection study = new Detection(BagBelief.prior(SimulatedBagsTest.film()));
        int first = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 60_000;
        for (int seed = first; seed < first + 120; seed++) {
            study.season(seed);
        }
        System.out.println(study);
    }

    /** Runs the four bags of a season. */
    void season(long seed) {
        SimulatedSeason season = new SimulatedSeason(seed, 7);
        SimulatedSeason twin = new SimulatedSeason(seed, 7);
        twin.houseBySensor();
        Climate house = season.houseBySensor();
        for (int bag = 0; bag < 2; bag++) {
            Sitting well = sitting(house, season.lentSensor(season.run(season.bag(), NEVER)));
            falseCalls += well.calledShut(0, NEVER) ? 1 : 0;
            falseOff += well.verdict() == BagFit.Verdict.OFF ? 1 : 0;
            twin.lentSensor(twin.run(twin.bag(), NEVER));
            weeks++;
            int shutAt = season.randomMinute(24 * 60);
            SimulatedBag closing = season.bag();
            Climate truth = season.run(closing, shutAt);
            twin.randomMinute(24 * 60);
            Climate otherwise = twin.run(twin.bag(), NEVER);
            twin.lentSensor(otherwise);
            boolean found = count(sitting(house, season.lentSensor(truth)), shutAt, rise(truth, shutAt));
            compare(truth, otherwise, shutAt, found);
        }
    }

    private Sitting sitting(Climate house, Climate lent) {
        return new Sitting(VapourHours.of(SensoredBag.of(house, lent)), material);
    }

    private boolean count(Sitting sitting, int shutAt, double rise) {
        int first = shutAt / 60 + 1;
        int hourOfDay = (shutAt / 60 + 12) % 24;
        boolean found = sitting.calledShut(first, first + WITHIN_HOURS);
        shut[hourOfDay]++;
        foundAt[hourOfDay] += found ? 1 : 0;
        foundWithinDay += sitting.calledShut(first, first + 24) ? 1 : 0;
        telling += rise >= TELLS ? 1 : 0;
        foundOfTelling += rise >= TELLS && found ? 1 : 0;
        return found;
    }

    private void compare(Climate truth, Climate otherwise, int minute, boolean found) {
        int cell = minute / 5 + 1;
        double sum = 0;
        double squares = 0;
        int cells = WITHIN_HOURS * 12;
        for (int i = cell; i < cell + cells; i++) {
            double difference =
                    truth.humidity().valueOrNaN(i) - otherwise.humidity().valueOrNaN(i);
            sum += difference;
            squares += difference * difference;
        }
        couldBeFound += Math.sqrt(squares) / NOISE >= SURE ? 1 : 0;
        for (int k = 0; k < CHANGES.length; k++) {
            boolean below = sum / cells < CHANGES[k];
            shutBelow[k] += below ? 1 : 0;
            missedBelow[k] += below && !found ? 1 : 0;
        }
    }

    /** True mean humidity of the 6 h after a minute less that of the same hours the day before, %RH. */
    private static double rise(Climate truth, int minute) {
        int cell = minute / 5 + 1;
        int cells = WITHIN_HOURS * 12;
        double rise = 0;
        for (int i = cell; i < cell + cells; i++) {
            rise += truth.humidity().valueOrNaN(i) - truth.humidity().valueOrNaN(i - 288);
        }
        return rise / cells;
    }

    private static int sum(int[] counts) {
        return java.util.Arrays.stream(counts).sum();
    }

    /** Share found within 6 h. */
    double found() {
        return (double) sum(foundAt) / sum(shut);
    }

    /** The same of those whose humidity rose by 5 points or more. */
    double foundOfThoseThatTell() {
        return (double) foundOfTelling / telling;
    }

    int falseCalls() {
        return falseCalls;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append(sum(foundAt)).append(" of ").append(sum(shut)).append(" found within 6 h, ");
        text.append(foundWithinDay).append(" within 24 h; ");
        text.append(foundOfTelling).append(" of ").append(telling).append(" whose humidity rose by 5 points; ");
        text.append(falseCalls).append(" false calls in ").append(weeks).append(" bag-weeks, ");
        text.append(falseOff).append(" called off at their end; ");
        text.append(couldBeFound).append(" could be found by one who knew all but the noise; ");
        for (int k = 0; k < CHANGES.length; k++) {
            text.append(missedBelow[k]).append(" misses of ").append(shutBelow[k]);
            text.append(" that changed by less than ").append(CHANGES[k]).append(" points; ");
        }
        text.append("by the hour of day:");
        for (int hour = 0; hour < 24; hour++) {
            text.append(' ')
                    .append(hour)
                    .append(": ")
                    .append(foundAt[hour])
                    .append('/')
                    .append(shut[hour]);
        }
        return text.toString();
    }
}
