package bagward.collector;

import bagward.collector.payload.SensorSource;
import bagward.store.SqliteStores;
import bagward.store.spool.AwayStore;
import bagward.store.spool.SpooledQuarantine;
import bagward.store.spool.SpooledReadings;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Collector, spool and store in a process of their own that works until it is killed; its store of readings goes away and
 * comes back at random. Arguments: address of the broker, folder, seed. With an odd seed the sensors are behind a gateway, so
 * that their topics are moved from one session to another and back, if there is time.
 */
final class KilledStation {
    private static final long SPOOL_BYTES = 4 << 20;

    private KilledStation() {}

    private static List<SensorSource> sources(boolean behindGateway) {
        Optional<String> gateway = behindGateway ? Optional.of("loft") : Optional.empty();
        return MqttCollectorTest.SOURCES.stream()
                .map(s -> new SensorSource(s.sensor(), s.topic(), s.format(), gateway))
                .toList();
    }

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
                sources(Integer.parseInt(arguments[2]) % 2 != 0),
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
