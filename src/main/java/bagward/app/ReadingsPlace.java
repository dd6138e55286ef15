package bagward.app;

import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import bagward.store.influx.InfluxReadings;
import bagward.watch.Health;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Where the readings are kept: in the embedded store, or in InfluxDB if that is configured. */
final class ReadingsPlace implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofMinutes(5);

    private final SqliteStores stores;
    private final Optional<InfluxReadings> influx;

    private ReadingsPlace(SqliteStores stores, Optional<InfluxReadings> influx) {
        this.stores = stores;
        this.influx = influx;
    }

    /** Opens it; a server need not answer yet. */
    static ReadingsPlace open(StoreSettings settings, SqliteStores stores, Clock clock) {
        return new ReadingsPlace(
                stores, settings.influx().map(i -> InfluxReadings.open(i, stores.quarantine(), clock)));
    }

    /** The readings. */
    ReadingStore readings() {
        return influx.<ReadingStore>map(i -> i).orElseGet(stores::readings);
    }

    /** What a person should know of it beyond whether it answers; none if there is nothing. */
    List<Health.Part> parts() {
        return influx.map(InfluxReadings::troubles).filter(says -> !says.isEmpty()).stream()
                .map(says -> new Health.Part("InfluxDB", false, says))
                .toList();
    }

    /**
     * Waits until they can be read. After a power cut the server may come up later than this program; the broker takes
     * messages meanwhile.
     *
     * @throws bagward.store.StoreException if the server does not answer within some minutes
     */
    void awaitReadable() {
        influx.ifPresent(i -> i.awaitServer(PATIENCE));
    }

    @Override
    public void close() {
        influx.ifPresent(InfluxReadings::close);
    }
}
