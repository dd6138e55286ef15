package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.Samples;
import bagward.store.SqliteStores;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The window in memory against the store on disk. */
class ReadingWindowTest {
    private final SqliteStores stores;
    private final ReadingStore store;

    ReadingWindowTest(@TempDir Path folder) {
        stores = SqliteStores.open(folder.resolve("bagward.db"), Samples.CLOCK);
        store = stores.readings();
    }

    @AfterEach
    void close() {
        stores.close();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void it_answers_as_the_store_does_whatever_comes_in_which_order_while_it_moves_on(long seed) {
        Random random = new Random(seed);
        ReadingWindow window = new ReadingWindow(Samples.START);
        long start = 0;
        for (List<Reading> batch : Samples.cut(Samples.mixed(random, 300), random)) {
            store.append(batch);
            window.add(batch);
            start += random.nextInt(8);
            window.forgetBefore(Samples.at(start));
            compare(window, start, random);
        }
    }

    private void compare(ReadingWindow window, long start, Random random) {
        for (SeriesId series : Samples.SERIES) {
            Instant from = Samples.at(start + random.nextInt(70)).plusMillis(random.nextInt(3));
            Instant to = from.plusSeconds(random.nextInt(3_000));
            assertEquals(store.readings(series, from, to), window.readings(series, from, to));
            assertEquals(store.newest(series, from), window.newest(series, from));
            Instant first = Samples.at(start);
            assertEquals(store.readings(series, first, Instant.MAX), window.readings(series, first, Instant.MAX));
        }
    }

    @Test
    void loaded_from_the_store_it_holds_what_the_store_holds_since_its_start_and_when_the_sensor_was_last_heard() {
        store.append(List.of(Samples.humidity(1, 51), Samples.humidity(2, 52), Samples.humidity(9, 59)));
        ReadingWindow later = ReadingWindow.of(Stations.heard(Samples.AIR_HUMIDITY.sensor()), store, Samples.at(5));
        assertEquals(Optional.of(Samples.humidity(2, 52)), later.newest(Samples.AIR_HUMIDITY, Samples.at(6)));
        assertEquals(
                List.of(Samples.humidity(9, 59)), later.readings(Samples.AIR_HUMIDITY, Samples.at(5), Instant.MAX));
    }

    @Test
    void it_forgets_what_is_older_than_its_start_but_for_the_newest_of_that() {
        ReadingWindow window = new ReadingWindow(Samples.START);
        window.add(List.of(Samples.humidity(1, 51), Samples.humidity(2, 52), Samples.humidity(9, 59)));
        window.forgetBefore(Samples.at(5));
        assertEquals(
                List.of(Samples.humidity(2, 52), Samples.humidity(9, 59)),
                window.readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
    }
}
