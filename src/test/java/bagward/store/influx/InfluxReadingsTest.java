package bagward.store.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Reading;
import bagward.store.ReadingStore;
import bagward.store.ReadingStore.Receipt;
import bagward.store.ReadingStoreContract;
import bagward.store.Samples;
import bagward.store.SqliteStores;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** InfluxDB keeps the contract of every store of readings. */
class InfluxReadingsTest implements ReadingStoreContract {
    private static InfluxServer server;
    private static SqliteStores stores;
    private static int databases;

    private final List<InfluxReadings> opened = new ArrayList<>();

    @BeforeAll
    static void start(@TempDir Path folder) throws IOException {
        server = InfluxServer.start(folder.resolve("influxdb"));
        stores = SqliteStores.open(folder.resolve("bagward.db"), Samples.CLOCK);
    }

    @AfterAll
    static void stop() {
        stores.close();
        server.close();
    }

    @AfterEach
    void close() {
        opened.forEach(InfluxReadings::close);
    }

    @Test
    void where_one_answer_would_be_too_long_there_are_several() {
        InfluxSettings settings = InfluxStores.settings(server.url(), "dense " + databases++);
        Limits narrow = new Limits(Duration.ofSeconds(20), 4_000, 50);
        try (InfluxReadings store = new InfluxReadings(settings, stores.quarantine(), Samples.CLOCK, narrow)) {
            List<Reading> dense = new ArrayList<>();
            for (int i = 0; i < 2_000; i++) {
                dense.add(Reading.of(Samples.AIR_HUMIDITY, Samples.START.plusMillis(i), i % 100));
            }
            store.append(dense);
            assertEquals(new Receipt(0, 2_000, 0), store.append(dense));
            assertEquals(dense, InfluxStores.all(store, Samples.AIR_HUMIDITY));
        }
    }

    @Override
    public ReadingStore emptyStore() {
        InfluxSettings settings = new InfluxSettings(
                server.url(), "contract " + databases++, Optional.empty(), Optional.empty(), Optional.empty());
        InfluxReadings readings = InfluxReadings.open(settings, stores.quarantine(), Samples.CLOCK);
        opened.add(readings);
        return readings;
    }
}
