package bagward.pollen;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How often intervals of nominal 95 % hold the truth, over many invented seasons whose light lingers from day to day.
 *
 * @param seasons seasons in which a relation could be given
 * @param refused seasons in which it could not
 * @param slope share of intervals of the slope that held it
 * @param chance share of intervals of the chance at low, middle and high light that held it
 * @param rank share of intervals of the rank correlation that held its long-run value
 */
record RelationCoverage(int seasons, int refused, double slope, double chance, double rank) {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
    private static final double MIDDLE = 3;
    private static final double SPREAD = 1.5;

    /** The whole study: arguments are the number of seasons and of resamples. */
    public static void main(String[] arguments) {
        int seasons = Integer.parseInt(arguments[0]);
        int resamples = Integer.parseInt(arguments[1]);
        for (double lingering : new double[] {0, 0.5}) {
            for (double slope : new double[] {0, 0.3, 0.8, 1.5}) {
                RelationCoverage found = study(seasons, resamples, 40, slope, lingering);
                System.out.printf("noise lingers %.1f, slope %.1f: %s%n", lingering, slope, found);
            }
        }
    }

    /**
     * Studies seasons.
     *
     * @param lingering how much of the luck of a day carries over to the next, 0 to 1
     */
    static RelationCoverage study(int seasons, int resamples, int days, double slope, double lingering) {
        double longRun = rank(slope);
        int given = 0;
        int slopes = 0;
        int chances = 0;
        int ranks = 0;
        for (int season = 0; season < seasons; season++) {
            List<ScorePoint> points = points(days, slope, lingering, 1000 + season);
            BlockBootstrap bootstrap = new BlockBootstrap(resamples, 0.95, season);
            if (Relation.of(points, Predictor.LIGHT_TO_SCORE, bootstrap) instanceof FittedRelation fitted) {
                given++;
                slopes += fitted.slope().holds(slope) ? 1 : 0;
                ranks += fitted.rankInterval().orElseThrow().holds(longRun) ? 1 : 0;
                for (double light : new double[] {MIDDLE - SPREAD, MIDDLE, MIDDLE + SPREAD}) {
                    double truth = Logistic.share(slope * (light - MIDDLE));
                    chances += fitted.at(light).interval().holds(truth) ? 1 : 0;
                }
            }
        }
        return new RelationCoverage(
                given, seasons - given, slopes / (double) given, chances / (3.0 * given), ranks / (double) given);
    }

    private static double rank(double slope) {
        List<ScorePoint> points = points(20_000, slope, 0, 77);
        return Spearman.coefficient(
                points.stream().mapToDouble(ScorePoint::value).toArray(),
                points.stream().mapToDouble(ScorePoint::score).toArray());
    }

    private static List<ScorePoint> points(int days, double slope, double lingering, long seed) {
        Random random = new Random(seed);
        NormalDistribution normal = new NormalDistribution();
        double sky = random.nextGaussian() / Math.sqrt(0.75);
        double luck = random.nextGaussian();
        List<ScorePoint> points = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            sky = 0.5 * sky + random.nextGaussian();
            luck = lingering * luck + Math.sqrt(1 - lingering * lingering) * random.nextGaussian();
            double light = MIDDLE + SPREAD * sky;
            double latent = slope * (light - MIDDLE) + Logistic.logOdds(normal.cumulativeProbability(luck));
            int score = latent < -1.5 ? 0 : latent < 0 ? 1 : latent < 1.5 ? 2 : 3;
            LocalDate date = FIRST.plusDays(day);
            points.add(new ScorePoint(date, date.atTime(LocalTime.of(10, 0)).toInstant(ZoneOffset.UTC), score, light));
        }
        return points;
    }
}
