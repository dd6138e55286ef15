package bagward.bag;

import java.util.List;
import java.util.function.Function;

/**
 * What a material is believed to be after its sensored bags. Each parameter is a two-level normal model: bags scatter
 * about the mean of their material, lessons about their bag. Few lessons leave the prior, many replace it; the spread
 * between bags is learnt too, slowly.
 */
public final class MaterialLearning {
    /** Share of a prior's variance that is spread between bags; the rest is doubt about the material's mean. A prior. */
    private static final double BETWEEN_BAGS = 0.5;

    /** The prior spread between bags counts as so many bags. */
    private static final double PRIOR_BAGS = 4;

    /** The prior rest counts as so many days of readings. */
    private static final double PRIOR_DAYS = 3;

    private static final int ROUNDS = 8;

    private final BagBelief prior;
    private final List<BagLesson> lessons;
    private final BagBelief unsensored;

    /**
     * A material with its lessons.
     *
     * @param material with its priors
     * @param lessons what its sensored bags taught, in any order
     */
    public MaterialLearning(BagMaterial material, List<BagLesson> lessons) {
        this.prior = BagBelief.prior(material);
        this.lessons = List.copyOf(lessons);
        this.unsensored = belief(Pool::anotherBag);
    }

    /** What is believed of a bag of the material in which no sensor hung. */
    public BagBelief unsensored() {
        return unsensored;
    }

    /** What is believed of the bag that taught a lesson, for hours in which its sensor was not heard. */
    public BagBelief sensored(BagLesson own) {
        return belief((pool, part) -> pool.thisBag(part.apply(own)));
    }

    private BagBelief belief(Reading reading) {
        return new BagBelief(
                within(0, 1, part(prior.closureByDay(), BagLesson::closureByDay, reading)),
                within(0, 1, part(prior.closureByNight(), BagLesson::closureByNight, reading)),
                within(0, 1, part(prior.sunGain(), BagLesson::sunGain, reading)),
                within(0.5, 120, part(prior.responseMinutes(), BagLesson::responseMinutes, reading)),
                part(prior.nightCooling(), BagLesson::nightCooling, reading),
                prior.filmCooling(),
                rest(prior.temperatureRest(), BagLesson::temperatureRest),
                rest(prior.humidityRest(), BagLesson::humidityRest),
                lessons.size());
    }

    private Spread part(Spread before, Function<BagLesson, Spread> part, Reading reading) {
        return reading.read(new Pool(before, lessons.stream().map(part).toList()), part);
    }

    private double rest(double before, Function<BagLesson, Double> part) {
        double square = PRIOR_DAYS * before * before;
        double days = PRIOR_DAYS;
        for (BagLesson lesson : lessons) {
            square += lesson.days() * part.apply(lesson) * part.apply(lesson);
            days += lesson.days();
        }
        return Math.sqrt(square / days);
    }

    private static Spread within(double low, double high, Spread spread) {
        return new Spread(Math.max(low, Math.min(high, spread.mean())), spread.deviation());
    }

    /** What to read off a pool for one part of a lesson. */
    private interface Reading {
        Spread read(Pool pool, Function<BagLesson, Spread> part);

        private static Reading of(Function<Pool, Spread> reading) {
            return (pool, part) -> reading.apply(pool);
        }
    }

    private BagBelief belief(Function<Pool, Spread> reading) {
        return belief(Reading.of(reading));
    }

    /** The two-level model of one parameter. */
    private static final class Pool {
        private double mean;
        private double meanVariance;
        private double between;

        Pool(Spread before, List<Spread> taught) {
            double variance = before.deviation() * before.deviation();
            double doubt = (1 - BETWEEN_BAGS) * variance;
            double priorBetween = BETWEEN_BAGS * variance;
            between = priorBetween;
            for (int round = 0; round < ROUNDS; round++) {
                locate(before.mean(), doubt, taught);
                scatter(priorBetween, taught);
            }
        }

        private void locate(double priorMean, double doubt, List<Spread> taught) {
            double precision = 1 / doubt;
            double sum = priorMean / doubt;
            for (Spread bag : taught) {
                double weight = 1 / (between + bag.deviation() * bag.deviation());
                precision += weight;
                sum += weight * bag.mean();
            }
            mean = sum / precision;
            meanVariance = 1 / precision;
        }

        /** Expected square of each bag's own deviation, given its lesson, beside the prior's bags. */
        private void scatter(double priorBetween, List<Spread> taught) {
            double sum = PRIOR_BAGS * priorBetween;
            double bags = PRIOR_BAGS;
            for (Spread bag : taught) {
                double error = bag.deviation() * bag.deviation();
                double kept = between / (between + error);
                double off = kept * (bag.mean() - mean);
                sum += off * off + kept * error;
                bags++;
            }
            between = sum / bags;
        }

        Spread anotherBag() {
            return new Spread(mean, Math.sqrt(between + meanVariance));
        }

        Spread thisBag(Spread own) {
            double error = own.deviation() * own.deviation();
            double kept = between / (between + error);
            double doubt = kept * error + (1 - kept) * (1 - kept) * meanVariance;
            return new Spread(mean + kept * (own.mean() - mean), Math.sqrt(doubt));
        }
    }
}
