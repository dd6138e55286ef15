package bagward.notify;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that tests move by hand. */
final class HandClock extends Clock {
    private volatile Instant now;

    HandClock(Instant now) {
        this.now = now;
    }

    void wait(Duration time) {
        now = now.plus(time);
    }

    void set(Instant then) {
        now = then;
    }

    @Override
    public Instant instant() {
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
