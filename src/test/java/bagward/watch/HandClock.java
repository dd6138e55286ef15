package bagward.watch;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;

/** A clock that a test sets, and can break. */
final class HandClock extends Clock {
    private volatile Instant now;
    private volatile Optional<RuntimeException> broken = Optional.empty();

    HandClock(Instant now) {
        this.now = now;
    }

    void set(Instant instant) {
        now = instant;
    }

    void breakDown() {
        broken = Optional.of(new IllegalStateException("the clock is broken"));
    }

    void repair() {
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
