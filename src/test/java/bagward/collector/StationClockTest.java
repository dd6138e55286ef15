package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is noticed of a clock that people and networks set. */
class StationClockTest {
    private static final Instant MORNING = Instant.parse("2026-05-04T06:00:00Z");

    private final SetClock clock = new SetClock(MORNING);
    private final StationClock watched = StationClock.watched(clock, clock::nanos);

    /** A clock, and a count of nanoseconds that setting it does not change. */
    static final class SetClock extends Clock {
        private Instant now;
        private long nanos;

        SetClock(Instant now) {
            this.now = now;
        }

        /** Time passes. */
        synchronized void pass(Duration time) {
            now = now.plus(time);
            nanos += time.toNanos();
        }

        /** Somebody sets it. */
        synchronized void set(Instant to) {
            now = to;
        }

        synchronized long nanos() {
            return nanos;
        }

        @Override
        public synchronized Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    @Test
    void a_clock_that_runs_is_never_said_to_jump_however_seldom_one_looks() {
        for (int i = 0; i < 100; i++) {
            clock.pass(Duration.ofMinutes(i));
            assertEquals(Optional.empty(), watched.look());
        }
        assertEquals(Optional.empty(), watched.newestJump());
        assertEquals(Optional.empty(), watched.trouble());
    }

    @Test
    void a_jump_is_known_with_its_size_and_how_long_the_clock_had_run_evenly() {
        clock.pass(Duration.ofHours(1));
        watched.look();
        clock.pass(Duration.ofSeconds(5));
        clock.set(MORNING.minus(Duration.ofHours(3)));
        StationClock.Jump back = watched.look().orElseThrow();
        assertEquals(MORNING.minus(Duration.ofHours(3)), back.at());
        assertEquals(Duration.ofHours(-4).minusSeconds(5), back.by());
        assertEquals(MORNING, back.evenSince());

        clock.pass(Duration.ofMinutes(2));
        assertEquals(Optional.empty(), watched.look(), "a jump is told once");
        clock.set(MORNING);
        StationClock.Jump forward = watched.look().orElseThrow();
        assertEquals(Duration.ofHours(3).minusMinutes(2), forward.by());
        assertEquals(back.at(), forward.evenSince());
        assertEquals(Optional.of(forward), watched.newestJump());
    }

    @Test
    void small_corrections_are_no_jumps() {
        clock.set(MORNING.plusMillis(1500));
        assertEquals(Optional.empty(), watched.look());
        clock.set(MORNING);
        assertEquals(Optional.empty(), watched.look());
    }

    @Test
    void a_clock_of_long_ago_is_not_believed_and_setting_it_right_needs_no_alarm() {
        SetClock dead = new SetClock(Instant.parse("1970-01-01T00:00:40Z"));
        StationClock station = StationClock.watched(dead, dead::nanos);
        assertFalse(station.credible());
        assertTrue(station.trouble().orElseThrow().contains("1970-01-01T00:00:40Z, which cannot be"));
        assertTrue(station.behindAtLeast().toDays() > 20_000);
        dead.pass(Duration.ofSeconds(20));
        dead.set(MORNING);
        assertEquals(Optional.empty(), station.look());
        assertTrue(station.credible());
        assertEquals(Duration.ZERO, station.behindAtLeast());
    }

    @Test
    void an_invented_clock_is_taken_as_it_is() {
        SetClock invented = new SetClock(Instant.EPOCH);
        StationClock station = StationClock.trusted(invented);
        invented.set(MORNING);
        assertEquals(Optional.empty(), station.look());
        assertTrue(StationClock.trusted(new SetClock(Instant.EPOCH)).credible());
    }
}
