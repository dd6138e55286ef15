package bagward.store.influx;

import bagward.store.ReadingStore;
import bagward.store.ReadingStoreContract;
import bagward.store.Samples;
import bagward.store.SqliteStores;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
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

    @Override
    public ReadingStore emptyStore() {
        InfluxSettings settings = new InfluxSettings(
                server.url(), "contract " + databases++, Optional.empty(), Optional.empty(), Optional.empty());
        InfluxReadings readings = InfluxReadings.open(settings, stores.quarantine(), Samples.CLOCK);
        opened.add(readings);
        return readings;
    }
}
