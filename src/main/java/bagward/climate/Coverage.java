package bagward.climate;

import java.time.Duration;
import java.time.Instant;

/**
 * How much of a span is known.
 *
 * <p>There is no official number of hours that a daily mean needs. The common 75 % alone is too loose: a hole of six
 * hours at the worst place shifts the mean of a day that swings by 8 °C to both sides by 2.4 °C. So the longest gap is
 * limited too.
 *
 * @param known time with a value
 * @param unknown time without one; known and unknown together are the true length of the span
 * @param longestGap longest unbroken time without a value
 */
public record Coverage(Duration known, Duration unknown, Duration longestGap) {
    /** A mean needs this share of its span. */
    private static final double MEAN_SHARE = 0.75;
    /** A mean bears no longer gap than this. */
    private static final Duration MEAN_GAP = Duration.ofHours(3);
    /** A light sum needs this share of the daylight. */
    private static final double SUM_SHARE = 0.95;
    /** A light sum bears no longer gap in daylight than this. */
    private static final Duration SUM_GAP = Duration.ofMinutes(30);

    /** Coverage of a span by a series; time outside the grid is unknown. */
    public static Coverage of(RegularSeries series, Span span) {
        TimeGrid grid = series.grid();
        Cells cells = Cells.in(grid, span);
        long known = 0;
        Duration longest = Duration.ZERO;
        Instant gapFrom = span.from();
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (series.known(i)) {
                known++;
                longest = longer(longest, Duration.between(gapFrom, grid.at(i)));
                gapFrom = grid.at(i + 1);
            }
        }
        longest = longer(longest, Duration.between(gapFrom, span.to()));
        Duration knownTime = shorter(grid.step().multipliedBy(known), span.length());
        return new Coverage(knownTime, span.length().minus(knownTime), longest);
    }

    /** Known share, 0 to 1; 1 for a span of no length. */
    public double share() {
        double all = known.plus(unknown).toMillis();
        return all == 0 ? 1 : known.toMillis() / all;
    }

    /** Whether a mean over the span may stand: at least 75 % known and no gap of more than 3 h. */
    public boolean enoughForMean() {
        return share() >= MEAN_SHARE && longestGap.compareTo(MEAN_GAP) <= 0;
    }

    /** Whether a light sum over a span of daylight may stand: at least 95 % known and no gap of more than 30 min. */
    public boolean enoughForLightSum() {
        return share() >= SUM_SHARE && longestGap.compareTo(SUM_GAP) <= 0;
    }

    private static Duration longer(Duration a, Duration b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static Duration shorter(Duration a, Duration b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
