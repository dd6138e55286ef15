package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Measures both stores in one run: readings a second beside bare writes to the same server, time of a query of seven days
 * and of a season, bytes on disk. Run with the test class path; arguments: a folder, millions of rows. For the size after
 * compaction set INFLUXDB_DATA_CACHE_SNAPSHOT_WRITE_COLD_DURATION=10s and
 * INFLUXDB_DATA_COMPACT_FULL_WRITE_COLD_DURATION=20s before.
 */
final class StoreFigures {
    private static final Instant START = Instant.parse("2024-01-01T00:00:00Z");
    private static final int SERIES = 20;
    private static final int RATE_READINGS = 200_000;
    private static final Duration SEASON = Duration.ofDays(120);

    private final Path folder;
    private final InfluxServer server;
    private final SqliteStores sqlite;
    private int databases;

    private StoreFigures(Path folder, InfluxServer server, SqliteStores sqlite) {
        this.folder = folder;
        this.server = server;
        this.sqlite = sqlite;
    }

    /** Arguments: folder, millions of rows. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        long rows = Long.parseLong(arguments[1]) * 1_000_000;
        try (InfluxServer server = InfluxServer.start(folder.resolve("influx"));
                SqliteStores sqlite = SqliteStores.open(folder.resolve("sqlite/bagward.db"), Clock.systemUTC())) {
            StoreFigures figures = new StoreFigures(folder, server, sqlite);
            for (int batch : new int[] {500, 5_000}) {
                for (int round = 0; round < 3; round++) {
                    figures.rates(batch, round);
                }
            }
            figures.queries(rows);
        }
    }

    private InfluxReadings influx(String database) {
        return InfluxStores.open(InfluxStores.settings(server.url(), database));
    }

    private void rates(int batch, int round) throws IOException, InterruptedException {
        double bare = bare(batch);
        double influx;
        try (InfluxReadings store = influx("rate" + databases++)) {
            influx = rate(store, batch);
        }
        double embedded;
        Path file = folder.resolve("rate" + databases++ + "/bagward.db");
        try (SqliteStores stores = SqliteStores.open(file, Clock.systemUTC())) {
            embedded = rate(stores.readings(), batch);
        }
        say(
                "batch %d round %d: bare /write %.0f/s, InfluxDB store %.0f/s (%.2f of bare), embedded store %.0f/s",
                batch, round, bare, influx, influx / bare, embedded);
    }

    private static double rate(ReadingStore store, int batch) {
        Minutes rows = new Minutes();
        long start = System.nanoTime();
        for (int done = 0; done < RATE_READINGS; done += batch) {
            store.append(rows.next(batch));
        }
        return RATE_READINGS / seconds(start);
    }

    private double bare(int batch) throws IOException, InterruptedException {
        String database = "rate" + databases++;
        InfluxRequests.to(server).ask("", "CREATE DATABASE " + database);
        HttpClient client = HttpClient.newHttpClient();
        URI uri = URI.create(server.url() + "/write?precision=ms&db=" + database);
        Minutes rows = new Minutes();
        long start = System.nanoTime();
        for (int done = 0; done < RATE_READINGS; done += batch) {
            HttpRequest request = HttpRequest.newBuilder(uri)
                    .POST(BodyPublishers.ofString(Lines.of(rows.next(batch))))
                    .build();
            if (client.send(request, BodyHandlers.discarding()).statusCode() != 204) {
                throw new IOException("not written");
            }
        }
        return RATE_READINGS / seconds(start);
    }

    private void queries(long count) throws IOException, InterruptedException {
        try (InfluxReadings influx = influx("big")) {
            long influxBefore = bytes("influx/data") + bytes("influx/wal");
            fill("InfluxDB", influx, count);
            fill("embedded", sqlite.readings(), count);
            Instant end = START.plus(Duration.ofMinutes(count / SERIES));
            for (ReadingStore store : List.of(influx, sqlite.readings())) {
                query(store, end.minus(Duration.ofDays(7)), end);
                query(store, end.minus(SEASON), end);
            }
            TimeUnit.SECONDS.sleep(90);
            long influxBytes = bytes("influx/data") + bytes("influx/wal") - influxBefore;
            say(
                    "InfluxDB %.1f MB, embedded %.1f MB for each million readings",
                    influxBytes * 1.0 / count, bytes("sqlite") * 1.0 / count);
            query(influx, end.minus(Duration.ofDays(7)), end);
            query(influx, end.minus(SEASON), end);
        }
    }

    private static void fill(String name, ReadingStore store, long count) {
        Minutes rows = new Minutes();
        long start = System.nanoTime();
        for (long done = 0; done < count; done += 10_000) {
            store.append(rows.next(10_000));
        }
        say("%s: %d million rows in %.0f s", name, count / 1_000_000, seconds(start));
    }

    private static void query(ReadingStore store, Instant from, Instant to) {
        double[] millis = new double[7];
        int rows = 0;
        for (int i = 0; i < millis.length; i++) {
            long start = System.nanoTime();
            rows = store.readings(Minutes.series(i), from, to).size();
            millis[i] = 1_000 * seconds(start);
        }
        double first = millis[0];
        Arrays.sort(millis);
        long start = System.nanoTime();
        store.newest(Minutes.series(0), Instant.MAX);
        say(
                "%s: %d days of one series, %d rows: first %.0f ms, median %.0f ms; newest %.1f ms",
                store.getClass().getSimpleName(),
                Duration.between(from, to).toDays(),
                rows,
                first,
                millis[millis.length / 2],
                1_000 * seconds(start));
    }

    private long bytes(String below) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve(below))) {
            return files.filter(Files::isRegularFile)
                    .mapToLong(f -> f.toFile().length())
                    .sum();
        }
    }

    private static double seconds(long startNanos) {
        return (System.nanoTime() - startNanos) / 1e9;
    }

    private static void say(String form, Object... values) {
        System.out.printf(Locale.ROOT, form + "%n", values);
    }

    /** Readings of all series minute by minute: walks in steps of a tenth, as sensors give them. */
    private static final class Minutes {
        private final Random random = new Random(1);
        private final int[] tenths = new int[SERIES];
        private long given;

        static SeriesId series(int number) {
            return new SeriesId(new SensorId("air-" + number), Quantity.HUMIDITY);
        }

        List<Reading> next(int count) {
            List<Reading> rows = new ArrayList<>(count);
            for (int i = 0; i < count; i++, given++) {
                int series = (int) (given % SERIES);
                tenths[series] = Math.max(300, Math.min(1_000, tenths[series] + random.nextInt(7) - 3));
                rows.add(Reading.of(series(series), START.plusSeconds(60 * (given / SERIES)), tenths[series] / 10.0));
            }
            return rows;
        }
    }
}
