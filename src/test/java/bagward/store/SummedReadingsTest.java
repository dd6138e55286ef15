package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Span;
import bagward.climate.Summary;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.store.ReadingStore.Receipt;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days are summed up from all their readings, whenever those come, before any of them go. */
class SummedReadingsTest {
    private static final SensorId AIR = new SensorId("air-1");
    private static final SeriesId SERIES = new SeriesId(AIR, Quantity.TEMPERATURE);
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 27);

    private final Path folder;
    private final List<SqliteStores> opened = new ArrayList<>();

    SummedReadingsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @AfterEach
    void close() {
        opened.forEach(SqliteStores::close);
    }

    @Test
    void a_day_is_summed_up_as_the_pure_function_says() {
        Part part = part();
        List<Reading> week = readings(1, 7);
        part.readings.append(week);
        part.sumUp();
        for (int i = 0; i < 7; i++) {
            Span day = Span.ofDay(FIRST.plusDays(i), ZONE);
            assertEquals(
                    Summary.over(day, week, Duration.ofMinutes(15)).stream().toList(),
                    part.stores.summaries().days(SERIES, FIRST.plusDays(i), FIRST.plusDays(i + 1)));
        }
        assertEquals(Optional.empty(), part.stores.summaries().oldestDue());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void what_is_kept_does_not_depend_on_the_order_in_which_readings_came(long seed) {
        List<Reading> week = readings(seed, 3);
        Part inOrder = part();
        inOrder.readings.append(week);
        inOrder.sumUp();
        Part mixed = part();
        Random random = new Random(seed);
        List<Reading> shuffled = new ArrayList<>(week);
        Collections.shuffle(shuffled, random);
        for (List<Reading> piece : Samples.cut(shuffled, random)) {
            mixed.readings.append(piece);
            if (random.nextInt(4) == 0) {
                mixed.sumUp();
            }
        }
        mixed.sumUp();
        assertEquals(inOrder.tens(), mixed.tens());
        assertEquals(inOrder.days(), mixed.days());
        assertTrue(
                inOrder.tens().size() > 250,
                "too few to mean anything: " + inOrder.tens().size());
    }

    @Test
    void a_day_raised_while_it_is_summed_up_stays_due() {
        Part part = part();
        part.readings.append(readings(1, 1));
        List<SummaryStore.Due> due = part.readings.due(100);
        part.readings.append(List.of(reading(Span.ofDay(FIRST, ZONE).from().plusSeconds(61), 39)));
        due.forEach(d -> part.stores.summaries().put(d, part.marks.sum(d.day(), part.readings)));
        assertEquals(Optional.of(FIRST), part.stores.summaries().oldestDue());
    }

    @Test
    void a_batch_that_could_not_be_stored_leaves_its_day_due_and_nothing_wrong() {
        Part part = part();
        ReadingStore failing = new FailingReadings();
        SummedReadings readings = new SummedReadings(failing, part.stores.summaries(), part.marks);
        assertThrows(StoreException.class, () -> readings.append(readings(1, 1)));
        assertEquals(Optional.of(FIRST), part.stores.summaries().oldestDue());
        part.sumUp();
        assertEquals(List.of(), part.days());
    }

    @Test
    void no_reading_goes_before_its_day_is_summed_up() {
        Part part = part();
        part.readings.append(readings(1, 3));
        Instant after = Span.ofDay(FIRST.plusDays(3), ZONE).to();
        assertEquals(0, part.readings.deleteBefore(after, 10_000));
        part.sumUp();
        int before = part.all().size();
        assertEquals(before, part.readings.deleteBefore(after, 10_000));
        assertEquals(List.of(), part.all());
        assertEquals(3, part.days().size());
        assertEquals(after, part.stores.summaries().keptSince());
    }

    @Test
    void old_readings_go_in_steps_of_the_size_that_is_asked_for_and_newer_ones_stay() {
        Part part = part();
        part.readings.append(readings(1, 3));
        part.sumUp();
        Instant limit = Span.ofDay(FIRST.plusDays(2), ZONE).from();
        List<Reading> stay =
                part.all().stream().filter(r -> !r.measuredAt().isBefore(limit)).toList();
        int old = part.all().size() - stay.size();
        int gone = 0;
        for (int step = 1; step > 0; gone += step) {
            step = part.readings.deleteBefore(limit, 100);
            assertTrue(step <= 100, "deleted at once: " + step);
        }
        assertEquals(old, gone);
        assertEquals(stay, part.all());
    }

    @Test
    void while_old_readings_are_deleted_new_ones_are_stored_and_late_ones_wait() throws Exception {
        Part part = part();
        Instant limit = Span.ofDay(FIRST.plusDays(2), ZONE).from();
        CountDownLatch deleting = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        SummedReadings readings =
                new SummedReadings(new SlowlyDeleting(deleting, goOn), part.stores.summaries(), part.marks);
        CompletableFuture<Integer> deleted = CompletableFuture.supplyAsync(() -> readings.deleteBefore(limit, 10));
        deleting.await();
        CompletableFuture<Receipt> late =
                CompletableFuture.supplyAsync(() -> readings.append(List.of(reading(limit.minusSeconds(1), 20))));
        CompletableFuture<Receipt> live =
                CompletableFuture.supplyAsync(() -> readings.append(List.of(reading(limit, 20))));
        assertEquals(1, live.get(20, TimeUnit.SECONDS).stored());
        assertThrows(TimeoutException.class, () -> late.get(200, TimeUnit.MILLISECONDS));
        goOn.countDown();
        assertEquals(1, late.get(20, TimeUnit.SECONDS).stored());
        assertEquals(0, deleted.get(20, TimeUnit.SECONDS));
    }

    /** Stores at once, and deletes only when it may. */
    private record SlowlyDeleting(CountDownLatch deleting, CountDownLatch goOn) implements ReadingStore {
        @Override
        public Receipt append(List<Reading> batch) {
            return new Receipt(batch.size(), 0, 0);
        }

        @Override
        public int deleteBefore(Instant before, int most) {
            deleting.countDown();
            try {
                goOn.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return 0;
        }

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return List.of();
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return Optional.empty();
        }
    }

    @Test
    void what_deleted_readings_took_is_given_back_to_the_disk() throws Exception {
        Part part = part();
        part.readings.append(readings(1, 90));
        part.sumUp();
        long before = pages();
        Instant limit = Span.ofDay(FIRST.plusDays(90), ZONE).to();
        while (part.readings.deleteBefore(limit, 2_000) > 0) {
            assertTrue(pages() <= before);
        }
        assertEquals(0, number("PRAGMA freelist_count"));
        assertTrue(pages() < before, pages() + " pages of " + before + " are left");
    }

    private long pages() throws Exception {
        return number("PRAGMA page_count");
    }

    private long number(String sql) throws Exception {
        try (Session session = Connector.to(folder.resolve("s0.db")).reader()) {
            return session.number(sql);
        }
    }

    @Test
    void readings_that_come_after_those_of_their_day_are_gone_fill_gaps_and_change_nothing_else() {
        Part part = part();
        Instant noon = Span.ofDay(FIRST, ZONE).from().plus(Duration.ofHours(12));
        part.readings.append(List.of(reading(noon, 20), reading(noon.plusSeconds(300), 21)));
        part.sumUp();
        part.readings.deleteBefore(Span.ofDay(FIRST.plusDays(1), ZONE).to(), 100);
        List<Summary> kept = part.tens();
        Instant evening = noon.plus(Duration.ofHours(7));
        part.readings.append(List.of(reading(noon.plusSeconds(60), 35), reading(evening, 15)));
        part.sumUp();
        assertTrue(part.tens().containsAll(kept), part.tens() + " lacks some of " + kept);
        assertTrue(part.tens().stream().anyMatch(s -> s.span().from().equals(evening)));
        assertEquals(1, part.days().size());
        assertEquals(21, part.days().get(0).maximum());
    }

    @Test
    void a_store_from_before_summaries_is_summed_up_whole() throws Exception {
        Path file = folder.resolve("old.db");
        List<Reading> week = readings(7, 4);
        OldStores.version(1, file, week);
        SqliteStores stores = SqliteStores.open(file, Samples.CLOCK);
        opened.add(stores);
        Part part = part(stores);
        part.sumUp();
        Part anew = part();
        anew.readings.append(week);
        anew.sumUp();
        assertEquals(anew.tens(), part.tens());
        assertEquals(anew.days(), part.days());
    }

    private Part part() {
        SqliteStores stores = SqliteStores.open(folder.resolve("s" + opened.size() + ".db"), Samples.CLOCK);
        opened.add(stores);
        return part(stores);
    }

    private static Part part(SqliteStores stores) {
        DayMarks marks = new DayMarks(station());
        return new Part(stores, new SummedReadings(stores.readings(), stores.summaries(), marks), marks);
    }

    /** Every 4 to 10 min with holes of hours, so that some ten minutes are whole, some half and some unknown. */
    private static List<Reading> readings(long seed, int days) {
        Random random = new Random(seed);
        Instant end = Span.ofDay(FIRST.plusDays(days - 1), ZONE).to();
        List<Reading> readings = new ArrayList<>();
        Instant at = Span.ofDay(FIRST, ZONE).from();
        while (at.isBefore(end.minusSeconds(900))) {
            readings.add(reading(at, random.nextInt(400) / 10.0));
            at = at.plusSeconds(random.nextInt(60) == 0 ? 9_000 : 240 + random.nextInt(360));
        }
        return readings;
    }

    private static Reading reading(Instant at, double value) {
        return Reading.of(SERIES, at, value);
    }

    private static Station station() {
        HouseId house = new HouseId("north");
        Sensor air = new Sensor(
                AIR, "air", house, Optional.empty(), false, Set.of(Quantity.TEMPERATURE), Duration.ofMinutes(5));
        return new Station("Test", 53, -7, 0, ZONE, List.of(new House(house, "North", List.of())), List.of(air));
    }

    private record Part(SqliteStores stores, SummedReadings readings, DayMarks marks) {
        void sumUp() {
            readings.due(10_000).forEach(d -> stores.summaries().put(d, marks.sum(d.day(), readings)));
        }

        List<Summary> tens() {
            return stores.summaries().tenMinutes(SERIES, Instant.EPOCH, Instant.MAX);
        }

        List<Summary> days() {
            return stores.summaries().days(SERIES, LocalDate.EPOCH, LocalDate.of(2999, 1, 1));
        }

        List<Reading> all() {
            return readings.readings(SERIES, Instant.MIN, Instant.MAX);
        }
    }

    private static final class FailingReadings implements ReadingStore {
        @Override
        public Receipt append(List<Reading> batch) {
            throw new StoreException("away");
        }

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return List.of();
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return Optional.empty();
        }
    }
}
