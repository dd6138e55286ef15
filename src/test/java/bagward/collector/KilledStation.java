package bagward.collector;

import bagward.store.SqliteStores;
import bagward.store.spool.AwayStore;
import bagward.store.spool.SpooledQuarantine;
import bagward.store.spool.SpooledReadings;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Random;

/**
 * Collector, spool and store in a process of their own that works until it is killed; its store of readings goes away and
 * comes back at random. Arguments: address of the broker, folder, seed.
 */
final class KilledStation {
    private static final long SPOOL_BYTES = 4 << 20;

    private KilledStation() {}

    public static void main(String[] arguments) throws InterruptedException {
        Path folder = Path.of(arguments[1]);
        Random random = new Random(Long.parseLong(arguments[2]));
        Clock clock = Clock.systemUTC();
        SqliteStores stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
        AwayStore away = new AwayStore(stores.readings());
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(clock),
                new BrokerSettings.External(new BrokerLink(arguments[0], Optional.empty(), Optional.empty()), 20),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                SpooledReadings.open(away, folder.resolve("spool"), SPOOL_BYTES, clock),
                SpooledQuarantine.open(stores.quarantine(), folder.resolve("refused"), SPOOL_BYTES, clock),
                stores.subscriptions(),
                readings -> {});
        collector.start();
        while (!collector.state().connected()) {
            Thread.sleep(10);
        }
        System.out.println("CONNECTED");
        while (true) {
            away.away(random.nextInt(3) == 0);
            Thread.sleep(random.nextInt(400));
        }
    }
}
