package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.store.HeardTopic;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of topics that nobody configured. */
class HeardTopicsTest {
    private final Path folder;
    private final MemoryStore store = new MemoryStore();
    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch unlocked = new CountDownLatch(1);

    HeardTopicsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** A database that another program has locked: it answers when that has let it go. */
    private final class Locked implements QuarantineStore {
        @Override
        public void quarantine(List<Quarantined> messages) {
            store.quarantine(messages);
        }

        @Override
        public List<Quarantined> newestQuarantined(int most) {
            return store.newestQuarantined(most);
        }

        @Override
        public long quarantinedCount() {
            return store.quarantinedCount();
        }

        @Override
        public void heard(List<HeardTopic> topics) {
            asked.countDown();
            try {
                unlocked.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            store.heard(topics);
        }

        @Override
        public List<HeardTopic> heardSince(Instant instant) {
            return store.heardSince(instant);
        }
    }

    @Test
    void a_database_that_keeps_the_list_waiting_keeps_no_reading_waiting() throws Exception {
        try (TestBroker broker = TestBroker.Kind.EMBEDDED.start(folder);
                MqttCollector collector = new MqttCollector(
                        StationClock.trusted(Clock.systemUTC()),
                        broker.settings(),
                        CollectorSettings.USUAL,
                        MqttCollectorTest.SOURCES,
                        store,
                        new Locked(),
                        store,
                        readings -> {});
                Publisher publisher = new Publisher(broker.settings().link())) {
            collector.start();
            await().atMost(Duration.ofSeconds(30)).until(() -> {
                publisher.publish("nobody/knows", "1");
                return asked.getCount() == 0;
            });
            publisher.publish("house/air", MqttCollectorTest.json(7));
            await().atMost(Duration.ofSeconds(30)).until(() -> store.count() == 1);
            assertEquals(List.of(), store.heardSince(Instant.MIN));
            unlocked.countDown();
            await().atMost(Duration.ofSeconds(30))
                    .until(() -> !store.heardSince(Instant.MIN).isEmpty());
        }
    }
}
