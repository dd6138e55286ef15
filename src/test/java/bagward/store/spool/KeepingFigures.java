package bagward.store.spool;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.Samples;
import bagward.store.SqliteStores;
import bagward.store.StoreException;
import bagward.store.StoreFiles;
import bagward.units.Quantity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Measures the spool (how fast it fills, how large it is, how fast it drains, beside the same store without a spool) and
 * copies of a large store. Run with the test class path; arguments: an empty folder, millions of readings for the spool,
 * millions for the copy.
 */
final class KeepingFigures {
    private static final int BATCH = 500;
    private static final int SERIES = 20;

    private KeepingFigures() {}

    /** Arguments: folder, millions through the spool, millions in the store that is copied. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        long spooled = Long.parseLong(arguments[1]) * 1_000_000;
        long copied = Long.parseLong(arguments[2]) * 1_000_000;
        try (SqliteStores plain = SqliteStores.open(folder.resolve("plain.db"), Clock.systemUTC());
                SqliteStores behind = SqliteStores.open(folder.resolve("behind.db"), Clock.systemUTC())) {
            say("without a spool: %.0f readings/s", spooled / fill(plain.readings(), spooled));
            drain(folder.resolve("spool"), behind.readings(), spooled);
        }
        copy(folder, copied);
    }

    private static void drain(Path folder, ReadingStore store, long count) throws InterruptedException {
        Gate gate = new Gate(store);
        try (SpooledReadings readings = SpooledReadings.open(gate, folder, 1L << 32, Clock.systemUTC())) {
            say("into the spool: %.0f readings/s", count / fill(readings, count));
            say(
                    "depth %d readings, %.1f MB for each million",
                    readings.state().depth().items(), readings.state().depth().bytes() / (count / 1e6) / 1e6);
            long start = System.nanoTime();
            gate.open = true;
            while (readings.state().depth().items() > 0) {
                Thread.sleep(20);
            }
            say("out of the spool: %.0f readings/s", count / seconds(start));
        }
    }

    private static void copy(Path folder, long count) throws Exception {
        Path file = folder.resolve("large.db");
        try (SqliteStores stores = SqliteStores.open(file, Clock.systemUTC())) {
            fill(stores.readings(), count);
            double gigabytes = Files.size(file) / 1e9;
            long start = System.nanoTime();
            StoreFiles.copy(file, folder.resolve("copy.db"), written -> {});
            say(
                    "copy of %.2f GB, looked through: %.1f s (%.1f s/GB)",
                    gigabytes, seconds(start), seconds(start) / gigabytes);
        }
        long start = System.nanoTime();
        StoreFiles.restore(folder.resolve("copy.db"), folder.resolve("back.db"), false, Samples.START);
        say("put back: %.1f s", seconds(start));
    }

    private static double fill(ReadingStore store, long count) {
        long start = System.nanoTime();
        for (long done = 0; done < count; done += BATCH) {
            List<Reading> batch = new ArrayList<>(BATCH);
            for (long i = done; i < done + BATCH; i++) {
                SeriesId series = new SeriesId(new SensorId("air-" + i % SERIES), Quantity.HUMIDITY);
                batch.add(Reading.of(series, Samples.START.plusSeconds(60 * (i / SERIES)), 50 + (double) (i % 37)));
            }
            store.append(batch);
        }
        return seconds(start);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static void say(String form, Object... values) {
        System.out.printf(Locale.ROOT, form + "%n", values);
    }

    /** A store that is away until it is opened. */
    private static final class Gate implements ReadingStore {
        private final ReadingStore store;
        private volatile boolean open;

        Gate(ReadingStore store) {
            this.store = store;
        }

        @Override
        public Receipt append(List<Reading> batch) {
            if (!open) {
                throw new StoreException("the store is away for the measurement");
            }
            return store.append(batch);
        }

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return store.readings(series, from, to);
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return store.newest(series, atOrBefore);
        }
    }
}
