package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/**
 * A collector on a real store, in a process of its own, that stops at a chosen moment and waits there to be killed.
 * Arguments: address of the broker, database file, moment.
 */
final class KilledCollector {
    /** Where it stops. */
    enum Moment {
        BEFORE_COMMIT,
        BEFORE_ACKNOWLEDGEMENT
    }

    private KilledCollector() {}

    public static void main(String[] arguments) throws InterruptedException {
        Moment moment = Moment.valueOf(arguments[2]);
        SqliteStores stores = SqliteStores.open(Path.of(arguments[1]), Clock.systemUTC());
        BrokerLink link = new BrokerLink(arguments[0], Optional.empty(), Optional.empty());
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                new BrokerSettings.External(link, 20),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                new Stopping(stores.readings(), moment),
                stores.quarantine(),
                stores.subscriptions(),
                readings -> {});
        collector.start();
        while (!collector.state().connected()) {
            Thread.sleep(20);
        }
        say("CONNECTED");
        new CountDownLatch(1).await();
    }

    private static void say(String word) {
        System.out.println(word);
        System.out.flush();
    }

    /** Stops for good at the moment of the first batch. */
    private record Stopping(ReadingStore real, Moment moment) implements ReadingStore {
        @Override
        public Receipt append(List<Reading> batch) {
            if (moment == Moment.BEFORE_ACKNOWLEDGEMENT) {
                real.append(batch);
            }
            say("STOPPED");
            while (true) {
                java.util.concurrent.locks.LockSupport.park();
            }
        }

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return real.readings(series, from, to);
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return real.newest(series, atOrBefore);
        }
    }
}
