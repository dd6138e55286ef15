package bagward.site;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A real site on a free port, with the invented station behind it and a clock that tests set. */
final class OpenSite implements AutoCloseable {
    static final Instant MORNING = Instant.parse("2027-05-11T07:40:00Z");

    private final SetClock clock = new SetClock();
    final SampleWatch watch = new SampleWatch(clock);
    private final SampleStores stores = new SampleStores(MORNING);
    final SamplePollen pollen = new SamplePollen(clock, watch::register);
    final SampleDeliveries deliveries = new SampleDeliveries(watch);
    final SampleRehearsals rehearsals = new SampleRehearsals(MORNING);
    private final Site site =
            new Site(SiteShow.settings(0), SiteShow.parts(watch, stores, pollen, deliveries, rehearsals, clock));
    final Visitor visitor;

    OpenSite() {
        site.start();
        visitor = new Visitor(site.port());
    }

    int port() {
        return site.port();
    }

    void wait(Duration time) {
        clock.now = clock.now.plus(time);
    }

    @Override
    public void close() {
        site.close();
        rehearsals.close();
    }

    private static final class SetClock extends Clock {
        private volatile Instant now = MORNING;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
