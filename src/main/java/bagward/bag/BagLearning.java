package bagward.bag;

import bagward.climate.MoistAir;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * Learns the parameters of the balance from one bag in which a sensor hung. A pure function of the readings: robust
 * regressions on the house as the bag feels it, gated where condensation clips the vapour, with younger cells counting
 * more since a head grows and wilts.
 *
 * <ul>
 *   <li>heat: T_bag − lagged T_house = k · lagged S − c (1 − day); the response time is the one of a few that leaves
 *       least, with a spread over those that leave hardly more;
 *   <li>vapour: e_bag − lagged e_house = f (es(T_bag) − lagged e_house), with f by day and by night.
 * </ul>
 */
public final class BagLearning {
    /** Response times that are tried, minutes. */
    private static final double[] RESPONSES = {2, 4, 8, 15};

    /** Least time heard in a bag from which anything is learnt. */
    private static final Duration SHORTEST = Duration.ofHours(12);

    /** After so many days a cell counts half. A prior. */
    private static final double HALF_LIFE_DAYS = 3;

    /** From this measured humidity on, %RH, condensation clips the vapour. */
    private static final double CLIPPED = 97;

    /** The air must be able to take up at least this much, kPa, for the closure to show. */
    private static final double LEAST_DEFICIT = 0.2;

    /** Cells of this length count as one independent look at the response time. */
    private static final double LOOK_MINUTES = 300;

    /** A fit is never believed to leave less than the tenth of a degree that sensors round to, K². */
    private static final double LEAST_LOSS = 0.1 * 0.1 / 12;

    private BagLearning() {}

    /**
     * What a bag teaches.
     *
     * @param bag readings of bag and house
     * @return the lesson; empty with less than 12 hours heard
     */
    public static Optional<BagLesson> lesson(SensoredBag bag) {
        LessonCells cells = LessonCells.of(bag, HALF_LIFE_DAYS);
        if (cells.heardMinutes() < SHORTEST.toMinutes()) {
            return Optional.empty();
        }
        TwoTermFit[] heats = new TwoTermFit[RESPONSES.length];
        int best = 0;
        for (int i = 0; i < RESPONSES.length; i++) {
            heats[i] = heat(cells, RESPONSES[i]);
            best = heats[i].loss() < heats[best].loss() ? i : best;
        }
        TwoTermFit heat = heats[best];
        TwoTermFit vapour = vapour(cells, RESPONSES[best]);
        double dryness = cells.meanDryness();
        SensorOffset pair = bag.pairOffset();
        double byPair = dryness > 0 ? pair.humidity().deviation() / dryness : BagLesson.UNLEARNT;
        double sunDays = cells.meanGlobalByDay();
        double byWarmth = sunDays > 0 ? pair.temperature().deviation() / sunDays : BagLesson.UNLEARNT;
        return Optional.of(new BagLesson(
                closure(vapour.first(), byPair),
                closure(vapour.second(), byPair),
                widened(heat.first(), byWarmth),
                response(heats, best, cells),
                widened(
                        new Spread(-heat.second().mean(), heat.second().deviation()),
                        pair.temperature().deviation()),
                Math.sqrt(heat.loss()),
                cells.humidityRest(vapour, RESPONSES[best]),
                cells.heardMinutes() / 1440.0));
    }

    private static TwoTermFit heat(LessonCells cells, double response) {
        double[] felt = cells.lagged(cells.global(), response);
        double[] house = cells.lagged(cells.houseTemperature(), response);
        double[] warmer = new double[felt.length];
        double[] night = new double[felt.length];
        for (int i = 0; i < felt.length; i++) {
            warmer[i] = cells.bagTemperature()[i] - house[i];
            night[i] = 1 - cells.day()[i];
        }
        return TwoTermFit.of(felt, night, warmer, cells.weight(), cells.cellsPerDay());
    }

    private static TwoTermFit vapour(LessonCells cells, double response) {
        double[] house = cells.lagged(cells.houseVapour(), response);
        double[] byDay = new double[house.length];
        double[] byNight = new double[house.length];
        double[] more = new double[house.length];
        double[] weight = cells.weight().clone();
        for (int i = 0; i < house.length; i++) {
            double saturation = MoistAir.saturationKilopascals(cells.bagTemperature()[i]);
            double bag = cells.bagHumidity()[i] / 100 * saturation;
            double room = saturation - house[i];
            byDay[i] = room * cells.day()[i];
            byNight[i] = room * (1 - cells.day()[i]);
            more[i] = bag - house[i];
            if (!(room > LEAST_DEFICIT) || !(cells.bagHumidity()[i] < CLIPPED)) {
                weight[i] = 0;
            }
        }
        return TwoTermFit.of(byDay, byNight, more, weight, cells.cellsPerDay());
    }

    private static Spread closure(Spread fitted, double byPair) {
        Spread wide = widened(fitted, byPair);
        return new Spread(Math.max(0, Math.min(1, wide.mean())), wide.deviation());
    }

    private static Spread widened(Spread fitted, double further) {
        return new Spread(fitted.mean(), Math.min(BagLesson.UNLEARNT, Math.hypot(fitted.deviation(), further)));
    }

    private static Spread response(TwoTermFit[] heats, int best, LessonCells cells) {
        double looks = cells.heardMinutes() / LOOK_MINUTES;
        double[] weights = new double[heats.length];
        for (int i = 0; i < heats.length; i++) {
            weights[i] = Math.exp(-looks / 2 * (loss(heats[i]) / loss(heats[best]) - 1));
        }
        double all = Arrays.stream(weights).sum();
        double mean = 0;
        double square = 0;
        for (int i = 0; i < weights.length; i++) {
            mean += weights[i] / all * RESPONSES[i];
            square += weights[i] / all * RESPONSES[i] * RESPONSES[i];
        }
        double betweenTries = mean / 3;
        return new Spread(mean, Math.hypot(Math.sqrt(Math.max(0, square - mean * mean)), betweenTries));
    }

    private static double loss(TwoTermFit heat) {
        return Math.max(LEAST_LOSS, heat.loss());
    }
}
