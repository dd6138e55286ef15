package bagward.demo;

import bagward.units.Checks;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;

/**
 * A clock that stands at a fixed instant until it is released and then runs faster than real time. It never steps back.
 */
public final class DemoClock extends Clock {
    /** Slowest allowed speed: real time. */
    public static final double SLOWEST = 1;

    /** Fastest allowed speed: a day in 43 seconds. */
    public static final double FASTEST = 600;

    private final Instant start;
    private final double speed;
    private final ZoneId zone;
    private final LongSupplier nanoTime;
    private final AtomicReference<Optional<Long>> released;

    private DemoClock(
            Instant start, double speed, ZoneId zone, LongSupplier nanoTime, AtomicReference<Optional<Long>> released) {
        this.start = start;
        this.speed = Checks.within("speed of the demo", speed, SLOWEST, FASTEST, "times real time");
        this.zone = zone;
        this.nanoTime = nanoTime;
        this.released = released;
    }

    /**
     * A clock that still stands.
     *
     * @param start where it stands
     * @param speed how many times as fast as real time it will run, 1 to 600
     * @param zone its zone
     * @throws bagward.fault.ImpossibleValueException if the speed is outside
     */
    public static DemoClock standing(Instant start, double speed, ZoneId zone) {
        return standing(start, speed, zone, System::nanoTime);
    }

    static DemoClock standing(Instant start, double speed, ZoneId zone, LongSupplier nanoTime) {
        return new DemoClock(start, speed, zone, nanoTime, new AtomicReference<>(Optional.empty()));
    }

    /** Lets the clock run; a second call changes nothing. */
    public void release() {
        long now = nanoTime.getAsLong();
        released.updateAndGet(since -> since.isPresent() ? since : Optional.of(now));
    }

    /** Times as fast as real time. */
    public double speed() {
        return speed;
    }

    /** How long it takes in real time until the clock shows an instant; zero if it has passed. */
    public Duration realTimeUntil(Instant instant) {
        double nanos = Duration.between(instant(), instant).toNanos() / speed;
        return Duration.ofNanos(Math.max(0, Math.round(nanos)));
    }

    @Override
    public Instant instant() {
        return start.plusNanos((long) (running() * speed));
    }

    private long running() {
        Optional<Long> since = Objects.requireNonNull(released.get());
        return since.map(then -> nanoTime.getAsLong() - then).orElse(0L);
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new DemoClock(start, speed, other, nanoTime, released);
    }
}
