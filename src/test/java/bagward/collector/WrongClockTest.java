package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A collector whose station has a wrong clock stores nothing as good that is dated wrongly. */
class WrongClockTest {
    private static final Instant MORNING = Instant.parse("2026-05-04T06:00:00Z");

    private final Path folder;
    private final MemoryStore store = new MemoryStore();
    private final List<Reading> told = Collections.synchronizedList(new ArrayList<>());

    WrongClockTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private MqttCollector collector(TestBroker broker, StationClockTest.SetClock clock) {
        MqttCollector collector = new MqttCollector(
                StationClock.watched(clock, clock::nanos),
                broker.settings(),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                store,
                store,
                store,
                told::addAll);
        collector.start();
        soon().until(() -> collector.state().connected());
        return collector;
    }

    private static ConditionFactory soon() {
        return await().atMost(Duration.ofSeconds(20)).pollInterval(Duration.ofMillis(20));
    }

    private static String json(Instant at) {
        return "{\"t\":20,\"at\":" + at.getEpochSecond() + "}";
    }

    private List<Reading> sound() {
        return store.all().stream().filter(Reading::timeHolds).toList();
    }

    @Test
    void before_the_clock_is_set_messages_stay_with_the_broker_and_are_dated_rightly_afterwards() throws Exception {
        StationClockTest.SetClock clock = new StationClockTest.SetClock(Instant.parse("1970-01-01T00:00:30Z"));
        try (TestBroker broker = TestBroker.Kind.MOSQUITTO.start(folder);
                MqttCollector collector = collector(broker, clock);
                Publisher publisher = new Publisher(broker.settings().link())) {
            publisher.publish("house/bare/a", "21");
            publisher.publish("house/air", json(MORNING));
            soon().until(() -> collector.state().lastMessageAt().isPresent());
            assertTrue(
                    collector.state().says().contains("1970"), collector.state().says());
            assertEquals(0, store.count());
            clock.set(MORNING);
            soon().until(() -> store.count() == 2);
            assertEquals(0, store.quarantinedCount(), "nothing was taken for a reading of the future");
            assertEquals(
                    List.of(MORNING, MORNING),
                    store.all().stream().map(Reading::measuredAt).toList());
        }
    }

    @Test
    void what_a_clock_had_dated_into_the_future_is_left_out_once_it_is_set_back() throws Exception {
        StationClockTest.SetClock clock = new StationClockTest.SetClock(MORNING.plus(Duration.ofHours(5)));
        try (TestBroker broker = TestBroker.Kind.MOSQUITTO.start(folder);
                MqttCollector collector = collector(broker, clock);
                Publisher publisher = new Publisher(broker.settings().link())) {
            publisher.publish("house/bare/a", "21");
            publisher.publish("house/air", json(MORNING));
            soon().until(() -> store.count() == 2 && collector.state().counts().waiting() == 0);
            assertEquals(2, sound().size());
            clock.set(MORNING.plusSeconds(10));
            soon().until(() -> sound().size() == 1);
            assertEquals(MORNING, sound().get(0).measuredAt(), "a reading with a time of its own holds");
            assertEquals(2, store.count(), "nothing is deleted");
            soon().until(() -> told.stream().anyMatch(r -> !r.timeHolds()));
        }
    }

    @Test
    void what_was_dated_before_a_fresh_clock_was_set_forward_is_left_out() throws Exception {
        StationClockTest.SetClock clock = new StationClockTest.SetClock(MORNING.minus(Duration.ofHours(9)));
        try (TestBroker broker = TestBroker.Kind.MOSQUITTO.start(folder);
                MqttCollector collector = collector(broker, clock);
                Publisher publisher = new Publisher(broker.settings().link())) {
            publisher.publish("house/bare/a", "21");
            soon().until(() -> store.count() == 1);
            clock.set(MORNING);
            soon().until(() -> sound().isEmpty());
            publisher.publish("house/bare/a", "22");
            soon().until(() -> sound().size() == 1);
            assertEquals(22, sound().get(0).value());
            soon().until(() -> collector.state().counts().messages() == 2);
        }
    }
}
