package bagward.collector;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Watches the station's clock, which on small computers has no battery: after a power cut it stands at some time of the
 * past until it is set over the network. A clock before 2025, when there was no Bagward, is certainly wrong, and nothing is
 * stored by it. A clock that moves otherwise than the computer's own count of seconds was set. Safe for use by
 * several threads.
 */
public final class StationClock {
    /** What the clock may gain or lose between two looks without having been set. */
    private static final Duration EVEN = Duration.ofSeconds(2);

    /** No Bagward is older. */
    private static final Instant EARLIEST = Instant.parse("2025-01-01T00:00:00Z");

    private final Clock clock;
    private final LongSupplier nanos;
    private final Instant earliest;
    private final boolean watched;
    private final double pace;
    private Instant lastTime;
    private long lastNanos;
    private Instant evenSince;
    private Optional<Jump> newest = Optional.empty();

    private StationClock(Clock clock, LongSupplier nanos, Instant earliest, boolean watched, double pace) {
        this.clock = clock;
        this.nanos = nanos;
        this.earliest = earliest;
        this.watched = watched;
        this.pace = pace;
        this.lastTime = clock.instant();
        this.lastNanos = nanos.getAsLong();
        this.evenSince = lastTime;
    }

    /**
     * Watches a clock.
     *
     * @param nanos a count of nanoseconds that nobody sets
     */
    public static StationClock watched(Clock clock, LongSupplier nanos) {
        return new StationClock(clock, nanos, EARLIEST, true, 1);
    }

    /** Takes every time for right: for invented times. */
    public static StationClock trusted(Clock clock) {
        return trusted(clock, 1);
    }

    /**
     * The same for a clock that runs fast on purpose.
     *
     * @param pace how many times as fast as real time
     */
    public static StationClock trusted(Clock clock, double pace) {
        return new StationClock(clock, () -> 0, Instant.MIN, false, pace);
    }

    /**
     * A time at which the clock was set.
     *
     * @param at what it said first afterwards
     * @param by how far it moved; negative for back
     * @param evenSince since when it had run evenly before, by its own time
     */
    public record Jump(Instant at, Duration by, Instant evenSince) {}

    /** Looks at the clock; to be called every few seconds. Returns the jump since the last look, if there was one. */
    public synchronized Optional<Jump> look() {
        Instant time = clock.instant();
        long count = nanos.getAsLong();
        Duration by = Duration.between(lastTime, time).minusNanos(count - lastNanos);
        Optional<Jump> jump = Optional.empty();
        // What a clock did that was known to be wrong needs no word: nothing was stored by it.
        if (watched && by.abs().compareTo(EVEN) > 0) {
            if (!lastTime.isBefore(earliest)) {
                jump = Optional.of(new Jump(time, by, evenSince));
                newest = jump;
            }
            evenSince = time;
        }
        lastTime = time;
        lastNanos = count;
        return jump;
    }

    /** Whether the clock may be right. */
    public boolean credible() {
        return !clock.instant().isBefore(earliest);
    }

    /** The clock itself. */
    public Clock clock() {
        return clock;
    }

    /** How many times as fast as real time it runs. */
    public double pace() {
        return pace;
    }

    /** The newest jump. */
    public synchronized Optional<Jump> newestJump() {
        return newest;
    }

    /** How far the clock is behind at least; zero if it may be right. */
    public Duration behindAtLeast() {
        Instant time = clock.instant();
        return time.isBefore(earliest) ? Duration.between(time, earliest) : Duration.ZERO;
    }

    /** One sentence on what is wrong with it; empty if nothing is. */
    public Optional<String> trouble() {
        if (!credible()) {
            return Optional.of("the station's clock says " + clock.instant() + ", which cannot be: nothing is"
                    + " stored, and messages stay with the broker until it is set");
        }
        return Optional.empty();
    }
}
