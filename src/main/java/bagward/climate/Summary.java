package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a series was like over a stretch of time; kept when the readings themselves are gone.
 *
 * <p>A reading stands until the next one, or for at most a hold limit, as in {@link Resampler}. Mean and extremes are
 * over the covered time only: where it is not the whole span, the minimum is "at most" and the maximum "at least" the
 * value given.
 *
 * @param span the stretch
 * @param readings how many were measured in it, 0 or more
 * @param mean weighted by time, in the unit of the series
 * @param minimum lowest value that stood in it
 * @param maximum highest value that stood in it
 * @param covered time for which a reading stood, above 0 and at most the span
 */
public record Summary(Span span, long readings, double mean, double minimum, double maximum, Duration covered) {
    /** Refuses a summary of nothing, or of more than its span. */
    public Summary {
        if (covered.isNegative() || covered.isZero() || covered.compareTo(span.length()) > 0) {
            throw new ImpossibleValueException("a summary that covers " + covered + " of " + span.length()
                    + " is impossible: it must cover more than nothing and no more than its span");
        }
        // Rounding may carry a mean of equal values past them by a hair.
        mean = Math.min(maximum, Math.max(minimum, mean));
    }

    /** Covered share of the span, above 0 to 1. */
    public double share() {
        return (double) covered.toMillis() / span.length().toMillis();
    }

    /**
     * The summary of a span.
     *
     * @param readings readings of one series as a {@link ReadingSource} gives them, from one hold limit before the span on
     * @param hold longest time for which a reading stands when no other follows; above 0
     * @return empty if nothing is known of the span
     */
    public static Optional<Summary> over(Span span, List<Reading> readings, Duration hold) {
        return between(List.of(span.from(), span.to()), readings, hold).stream().findFirst();
    }

    /** The same for each cell of a grid; cells of which nothing is known are left out. */
    public static List<Summary> onto(TimeGrid grid, List<Reading> readings, Duration hold) {
        List<Instant> limits = new ArrayList<>();
        for (int i = 0; i <= grid.size(); i++) {
            limits.add(grid.at(i));
        }
        return between(limits, readings, hold);
    }

    private static List<Summary> between(List<Instant> limits, List<Reading> readings, Duration hold) {
        Summing cells = new Summing(limits);
        long holdMillis = hold.toMillis();
        for (int i = 0; i < readings.size(); i++) {
            long from = readings.get(i).measuredAt().toEpochMilli();
            long limit = from + holdMillis;
            long next =
                    i + 1 < readings.size() ? readings.get(i + 1).measuredAt().toEpochMilli() : limit;
            cells.add(from, Math.min(limit, next), readings.get(i).value());
        }
        return cells.summaries();
    }
}
