package bagward.clockwork;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;

/** A clock that a test moves by hand, and can break. */
public final class HandClock extends Clock {
    private volatile Instant now;
    private volatile Optional<RuntimeException> broken = Optional.empty();

    /** Stands at an instant. */
    public HandClock(Instant now) {
        this.now = now;
    }

    /** Sets it. */
    public void set(Instant then) {
        now = then;
    }

    /** Moves it on. */
    public synchronized void wait(Duration time) {
        now = now.plus(time);
    }

    /** Makes it fail whoever asks. */
    public void breakDown() {
        broken = Optional.of(new IllegalStateException("the clock is broken"));
    }

    /** Makes it go again. */
    public void repair() {
        broken = Optional.empty();
    }

    @Override
    public Instant instant() {
        if (broken.isPresent()) {
            throw broken.get();
        }
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
