package bagward.store;

import static bagward.store.Samples.at;
import static bagward.store.Samples.humidity;
import static bagward.store.Samples.temperature;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore.Receipt;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every store of readings must do. */
public interface ReadingStoreContract {
    /** A store without readings. */
    ReadingStore emptyStore();

    @Test
    default void an_empty_store_has_no_readings() {
        ReadingStore store = emptyStore();
        assertEquals(List.of(), store.readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
        assertEquals(Optional.empty(), store.newest(Samples.AIR_HUMIDITY, Instant.MAX));
    }

    @Test
    default void an_empty_batch_is_stored_as_nothing() {
        assertEquals(new Receipt(0, 0, 0), emptyStore().append(List.of()));
    }

    @Test
    default void what_was_stored_comes_back_with_time_value_and_flags() {
        ReadingStore store = emptyStore();
        Reading flagged = new Reading(
                Samples.AIR_HUMIDITY,
                Instant.parse("2026-05-04T03:02:01.009Z"),
                100,
                Set.of(ReadingFlag.HUMIDITY_CAPPED, ReadingFlag.TIME_OF_ARRIVAL));
        assertEquals(new Receipt(1, 0, 0), store.append(List.of(flagged)));
        assertEquals(List.of(flagged), all(store, Samples.AIR_HUMIDITY));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.1, 33.333333333333336, 99.99999999999999, 100.0, Double.MIN_VALUE})
    default void a_value_comes_back_to_the_last_bit(double value) {
        ReadingStore store = emptyStore();
        store.append(List.of(humidity(0, value)));
        assertEquals(
                Double.doubleToLongBits(value),
                Double.doubleToLongBits(all(store, Samples.AIR_HUMIDITY).get(0).value()));
    }

    @Test
    default void times_before_1970_are_kept() {
        ReadingStore store = emptyStore();
        Reading old = Reading.of(Samples.AIR_HUMIDITY, Instant.parse("1969-12-31T23:59:59.999Z"), 50);
        store.append(List.of(old));
        assertEquals(List.of(old), all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    default void a_range_holds_its_first_instant_and_not_its_last() {
        ReadingStore store = emptyStore();
        store.append(List.of(humidity(0, 50), humidity(1, 51), humidity(2, 52), humidity(3, 53)));
        assertEquals(List.of(humidity(1, 51), humidity(2, 52)), store.readings(Samples.AIR_HUMIDITY, at(1), at(3)));
        assertEquals(List.of(), store.readings(Samples.AIR_HUMIDITY, at(1), at(1)));
        assertEquals(List.of(), store.readings(Samples.AIR_HUMIDITY, at(3), at(1)));
    }

    @Test
    default void a_range_that_begins_between_two_milliseconds_leaves_the_earlier_one_out() {
        ReadingStore store = emptyStore();
        store.append(List.of(humidity(1, 51)));
        assertEquals(List.of(), store.readings(Samples.AIR_HUMIDITY, at(1).plusNanos(1), at(9)));
        assertEquals(List.of(humidity(1, 51)), store.readings(Samples.AIR_HUMIDITY, at(0), at(1).plusNanos(1)));
    }

    @Test
    default void the_newest_is_the_last_one_at_or_before_an_instant() {
        ReadingStore store = emptyStore();
        store.append(List.of(humidity(5, 55), humidity(1, 51)));
        assertEquals(Optional.of(humidity(5, 55)), store.newest(Samples.AIR_HUMIDITY, Instant.MAX));
        assertEquals(Optional.of(humidity(5, 55)), store.newest(Samples.AIR_HUMIDITY, at(5)));
        assertEquals(Optional.of(humidity(1, 51)), store.newest(Samples.AIR_HUMIDITY, at(5).minusNanos(1)));
        assertEquals(Optional.empty(), store.newest(Samples.AIR_HUMIDITY, at(0)));
    }

    @Test
    default void series_do_not_mix() {
        ReadingStore store = emptyStore();
        store.append(List.of(humidity(1, 51), temperature(1, 21), Samples.lentHumidity(1, 91)));
        assertEquals(List.of(temperature(1, 21)), all(store, Samples.AIR_TEMPERATURE));
        assertEquals(List.of(Samples.lentHumidity(1, 91)), all(store, Samples.LENT_HUMIDITY));
    }

    @Test
    default void the_same_batch_twice_is_stored_once() {
        ReadingStore store = emptyStore();
        List<Reading> batch = List.of(humidity(1, 51), temperature(1, 21), humidity(2, 52));
        assertEquals(new Receipt(3, 0, 0), store.append(batch));
        assertEquals(new Receipt(0, 3, 0), store.append(batch));
        assertEquals(List.of(humidity(1, 51), humidity(2, 52)), all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    default void a_reading_twice_in_one_batch_is_stored_once() {
        ReadingStore store = emptyStore();
        assertEquals(new Receipt(1, 1, 0), store.append(List.of(humidity(1, 51), humidity(1, 51))));
        assertEquals(List.of(humidity(1, 51)), all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    default void of_two_values_for_one_time_the_higher_one_is_kept_whichever_came_first() {
        ReadingStore rising = emptyStore();
        rising.append(List.of(humidity(1, 51)));
        assertEquals(new Receipt(0, 0, 1), rising.append(List.of(humidity(1, 61))));
        assertEquals(List.of(humidity(1, 61)), all(rising, Samples.AIR_HUMIDITY));

        ReadingStore falling = emptyStore();
        falling.append(List.of(humidity(1, 61)));
        assertEquals(new Receipt(0, 0, 1), falling.append(List.of(humidity(1, 51))));
        assertEquals(List.of(humidity(1, 61)), all(falling, Samples.AIR_HUMIDITY));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    default void the_order_and_the_batches_in_which_readings_come_do_not_matter(long seed) {
        Random random = new Random(seed);
        List<Reading> readings = Samples.mixed(random, 400);
        ReadingStore inOrder = emptyStore();
        inOrder.append(readings);
        Collections.shuffle(readings, random);
        ReadingStore shuffled = emptyStore();
        for (List<Reading> batch : Samples.cut(readings, random)) {
            shuffled.append(batch);
        }
        for (SeriesId series : Samples.SERIES) {
            assertEquals(all(inOrder, series), all(shuffled, series));
        }
    }

    @Test
    default void flags_of_a_repeated_reading_are_united() {
        ReadingStore store = emptyStore();
        Reading plain = humidity(1, 51);
        Reading clipped = new Reading(plain.series(), plain.measuredAt(), 51, Set.of(ReadingFlag.CLIPPED));
        Reading arrived = new Reading(plain.series(), plain.measuredAt(), 51, Set.of(ReadingFlag.TIME_OF_ARRIVAL));
        store.append(List.of(clipped));
        assertEquals(new Receipt(0, 1, 0), store.append(List.of(plain)));
        assertEquals(List.of(clipped), all(store, Samples.AIR_HUMIDITY));
        assertEquals(new Receipt(0, 1, 0), store.append(List.of(arrived)));
        Set<ReadingFlag> both = Set.of(ReadingFlag.CLIPPED, ReadingFlag.TIME_OF_ARRIVAL);
        assertEquals(
                List.of(new Reading(plain.series(), plain.measuredAt(), 51, both)), all(store, Samples.AIR_HUMIDITY));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "1e5",
                "true",
                "time",
                "sensor",
                "value",
                "a.b-c_d",
                "NORTH",
                "north",
                "x..--__",
                "0123456789012345678901234567890123456789012345678901234567890123"
            })
    default void every_name_that_a_sensor_may_have_is_a_series_of_its_own(String name) {
        ReadingStore store = emptyStore();
        SeriesId series = new SeriesId(new SensorId(name), Quantity.LIGHT);
        SeriesId neighbour = new SeriesId(new SensorId("N" + name.substring(1)), Quantity.LIGHT);
        store.append(List.of(Reading.of(series, at(1), 11), Reading.of(neighbour, at(1), 22)));
        store.append(List.of(Reading.of(series, at(1), 11), Reading.of(series, at(0), 10)));
        int others = series.equals(neighbour) ? 22 : 11;
        assertEquals(List.of(Reading.of(series, at(0), 10), Reading.of(series, at(1), others)), all(store, series));
        assertEquals(Optional.of(Reading.of(neighbour, at(1), 22)), store.newest(neighbour, Instant.MAX));
    }

    @Test
    default void readings_of_far_years_are_kept_and_found_in_unbounded_ranges() {
        ReadingStore store = emptyStore();
        Reading past = Reading.of(Samples.AIR_HUMIDITY, Instant.parse("1902-03-04T05:06:07.008Z"), 20);
        Reading ahead = Reading.of(Samples.AIR_HUMIDITY, Instant.parse("2201-03-04T05:06:07.008Z"), 30);
        store.append(List.of(ahead, past));
        assertEquals(List.of(past, ahead), all(store, Samples.AIR_HUMIDITY));
        assertEquals(List.of(past), store.readings(Samples.AIR_HUMIDITY, Instant.MIN, Samples.START));
        assertEquals(List.of(ahead), store.readings(Samples.AIR_HUMIDITY, Samples.START, Instant.MAX));
        assertEquals(Optional.of(past), store.newest(Samples.AIR_HUMIDITY, Samples.START));
    }

    @Test
    default void late_readings_far_apart_meet_what_is_there() {
        ReadingStore store = emptyStore();
        List<Reading> season = new ArrayList<>();
        for (int day = 0; day < 60; day++) {
            season.add(humidity(day * 1_440L, day));
        }
        store.append(season);
        List<Reading> late = new ArrayList<>(List.of(humidity(0, 1), humidity(30 * 1_440L, 30), humidity(7, 7)));
        late.add(temperature(59 * 1_440L, 9));
        assertEquals(new Receipt(2, 1, 1), store.append(late));
        assertEquals(61, all(store, Samples.AIR_HUMIDITY).size());
        assertEquals(List.of(humidity(0, 1), humidity(7, 7)), store.readings(Samples.AIR_HUMIDITY, at(0), at(1_440)));
    }

    @Test
    default void a_batch_of_forty_thousand_is_stored_whole_and_repeats_whole() {
        ReadingStore store = emptyStore();
        List<Reading> batch = Samples.minutes(0, 40_000);
        assertEquals(new Receipt(40_000, 0, 0), store.append(batch));
        assertEquals(new Receipt(0, 40_000, 0), store.append(batch));
        assertEquals(batch, all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    default void a_batch_with_a_broken_element_leaves_nothing() {
        ReadingStore store = emptyStore();
        List<Reading> broken = Arrays.asList(humidity(1, 51), Samples.none(), humidity(2, 52));
        assertThrows(NullPointerException.class, () -> store.append(broken));
        assertEquals(List.of(), all(store, Samples.AIR_HUMIDITY));
        assertEquals(new Receipt(1, 0, 0), store.append(List.of(humidity(3, 53))));
    }

    @Test
    default void readers_beside_a_writer_see_whole_batches_only() {
        ReadingStore store = emptyStore();
        int size = 50;
        CompletableFuture<Void> writer = CompletableFuture.runAsync(() -> {
            for (int batch = 0; batch < 100; batch++) {
                store.append(Samples.minutes(batch * size, size));
            }
        });
        int seen = 0;
        while (!writer.isDone()) {
            int now = all(store, Samples.AIR_HUMIDITY).size();
            assertEquals(0, now % size, "a reader saw part of a batch");
            assertTrue(now >= seen, "a reader saw fewer readings than before");
            seen = now;
        }
        assertDoesNotThrow(writer::join);
        assertEquals(100 * size, all(store, Samples.AIR_HUMIDITY).size());
    }

    @Test
    default void writers_at_the_same_time_lose_nothing() {
        ReadingStore store = emptyStore();
        List<CompletableFuture<Void>> writers = new ArrayList<>();
        for (int writer = 0; writer < 4; writer++) {
            int first = writer * 1_000;
            writers.add(CompletableFuture.runAsync(() -> {
                for (int i = 0; i < 20; i++) {
                    store.append(Samples.minutes(first + i * 50, 50));
                }
            }));
        }
        writers.forEach(CompletableFuture::join);
        assertEquals(4_000, all(store, Samples.AIR_HUMIDITY).size());
    }

    private static List<Reading> all(ReadingStore store, SeriesId series) {
        return store.readings(series, Instant.MIN, Instant.MAX);
    }

    @Test
    default void old_readings_are_deleted_piece_by_piece_and_newer_ones_stay() {
        ReadingStore store = emptyStore();
        store.append(Samples.minutes(0, 250));
        store.append(List.of(Samples.temperature(5, 20), Samples.temperature(200, 21), Samples.lentHumidity(400, 90)));
        int gone = 0;
        int step;
        do {
            step = store.deleteBefore(Samples.at(200), 30);
            assertTrue(step <= 30, step + " went at once");
            gone += step;
        } while (step > 0);
        assertEquals(201, gone);
        assertEquals(Samples.minutes(200, 50), all(store, Samples.AIR_HUMIDITY));
        assertEquals(List.of(Samples.temperature(200, 21)), all(store, Samples.AIR_TEMPERATURE));
        assertEquals(List.of(Samples.lentHumidity(400, 90)), all(store, Samples.LENT_HUMIDITY));
    }

    @Test
    default void more_readings_of_one_instant_than_go_at_once_are_deleted_too() {
        ReadingStore store = emptyStore();
        store.append(List.of(Samples.humidity(1, 50), Samples.temperature(1, 20), Samples.lentHumidity(1, 90)));
        store.append(List.of(Samples.humidity(2, 50)));
        int steps = 0;
        while (store.deleteBefore(Samples.at(2), 1) > 0) {
            steps++;
        }
        assertTrue(steps > 0, "nothing went");
        assertEquals(List.of(), all(store, Samples.AIR_TEMPERATURE));
        assertEquals(List.of(), all(store, Samples.LENT_HUMIDITY));
        assertEquals(List.of(Samples.humidity(2, 50)), all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    default void a_reading_that_comes_late_after_those_of_its_time_were_deleted_is_stored() {
        ReadingStore store = emptyStore();
        store.append(Samples.minutes(0, 10));
        assertEquals(10, store.deleteBefore(Samples.at(10), 100));
        assertEquals(new Receipt(1, 0, 0), store.append(List.of(Samples.humidity(3, 33))));
        assertEquals(List.of(Samples.humidity(3, 33)), all(store, Samples.AIR_HUMIDITY));
    }
}
