package bagward.collector;

import static org.awaitility.Awaitility.await;

import bagward.climate.Reading;
import bagward.collector.payload.SensorSource;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A folder for a broker, and a store in memory for the collectors that listen to it. */
abstract class CollectorStage {
    Path folder;
    final MemoryStore store = new MemoryStore();
    final List<Reading> told = Collections.synchronizedList(new ArrayList<>());

    @BeforeEach
    void make(@TempDir Path forBroker) {
        folder = forBroker;
    }

    /** A collector that has been started and may not be connected yet. */
    MqttCollector collector(TestBroker broker, CollectorSettings settings, List<SensorSource> sources) {
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                broker.settings(),
                settings,
                sources,
                store,
                store,
                store,
                told::addAll);
        collector.start();
        return collector;
    }

    static ConditionFactory soon() {
        return await().atMost(Duration.ofSeconds(20)).pollInterval(Duration.ofMillis(20));
    }

    static void connected(MqttCollector collector) {
        soon().until(() -> collector.state().connected());
    }
}
