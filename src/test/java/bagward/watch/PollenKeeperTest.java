package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.PollenScore;
import bagward.bag.Register;
import bagward.climate.ClearSky;
import bagward.climate.CorrectedReadings;
import bagward.climate.HumidityCorrection;
import bagward.climate.Light;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Site;
import bagward.clockwork.HandClock;
import bagward.fault.RefusedInputException;
import bagward.mould.HeatLimits;
import bagward.pollen.PollenEntry;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pollen on a real store, with a clock that the test sets. */
class PollenKeeperTest {
    private static final HeatLimits HEAT = new HeatLimits(27, 30, Duration.ofHours(3), 33, "invented");
    private static final HouseId NORTH = new HouseId("north");
    private static final SensorId POST = new SensorId("post");
    private static final Site SITE = new Site(54, 0, 10);
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final Station STATION = new Station(
            "Test",
            SITE.latitude(),
            SITE.longitude(),
            SITE.elevation(),
            ZoneOffset.UTC,
            List.of(new House(NORTH, "North", List.of())),
            List.of(new Sensor(
                    POST,
                    "Post",
                    NORTH,
                    Optional.empty(),
                    false,
                    EnumSet.allOf(Quantity.class),
                    Duration.ofMinutes(10))));

    private final HandClock clock = new HandClock(at(20, 9));
    private final Path file;
    private volatile ReadingSource source;
    private SqliteStores stores;
    private PollenKeeper keeper;

    PollenKeeperTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
        open();
    }

    private void open() {
        stores = SqliteStores.open(file, clock);
        source = stores.readings();
        WatchSettings settings = new WatchSettings(
                Duration.ofMillis(5), Duration.ofMillis(50), Duration.ofDays(22), Duration.ofMinutes(5));
        keeper = new PollenKeeper(clock, STATION, HEAT, () -> source, stores.pollen(), () -> Register.EMPTY, settings);
    }

    @AfterEach
    void close() {
        keeper.close();
        stores.close();
    }

    @Test
    void the_season_begins_with_the_first_reading_and_ends_today() {
        store(days(0, 21));
        PollenReport report = report();
        assertEquals(21, report.days().size());
        assertEquals(FIRST, report.days().get(0).day());
        assertEquals(0.5, report.season().transmission().share(), 0.05);
        assertTrue(report.today().isPresent());
    }

    @Test
    void a_station_that_was_never_heard_has_a_report_without_days() {
        assertEquals(List.of(), report().days());
        assertTrue(keeper.report(new HouseId("south"), Optional.empty(), Predictor.LIGHT_TO_SCORE)
                .isEmpty());
    }

    @Test
    void readings_and_scores_that_come_late_and_in_any_order_give_the_same_report_as_in_time() {
        List<Reading> all = days(0, 21);
        List<PollenEntry> scores = scores(20);
        store(all);
        keeper.enter(scores);
        PollenReport inTime = report();
        assertEquals(20, inTime.rows().size());

        try (LateStation late = new LateStation(file.resolveSibling("late.db"))) {
            List<Reading> parts = new ArrayList<>(all);
            Collections.shuffle(parts, new Random(3));
            List<PollenEntry> entries = new ArrayList<>(scores);
            Collections.shuffle(entries, new Random(4));
            for (int part = 0; part < 4; part++) {
                late.store(parts.subList(part * parts.size() / 4, (part + 1) * parts.size() / 4));
                late.keeper.enter(entries.subList(part * 5, part * 5 + 5));
                late.report();
            }
            assertEquals(inTime.rows(), late.report().rows());
            assertEquals(inTime.days(), late.report().days());
            assertEquals(inTime.relation(), late.report().relation());
            assertEquals(inTime.today(), late.report().today());
            assertEquals(inTime.past(), late.report().past());
        }
    }

    @Test
    void a_correction_of_a_sensor_counts_for_the_days_that_were_read_before_it() {
        store(days(18, 21));
        double before = report().days().get(0).morningHumidity().orElseThrow();
        HumidityCorrection dry = new HumidityCorrection(POST, at(0, 0), 1, -10);
        source = new CorrectedReadings(stores.readings(), List.of(dry));
        assertEquals(before - 10, report().days().get(0).morningHumidity().orElseThrow(), 1e-9);
    }

    @Test
    void scores_are_still_there_after_a_restart_and_a_withdrawn_one_is_not() {
        keeper.enter(scores(3));
        PollenEntry.Scored wrong = (PollenEntry.Scored) scores(3).get(1);
        keeper.enter(List.of(new PollenEntry.Withdrawn(wrong.house(), wrong.line(), wrong.at(), "Bo")));
        close();
        open();
        assertEquals(2, keeper.scores().size());
    }

    @Test
    void the_future_and_unknown_houses_are_refused_and_nothing_is_kept() {
        PollenEntry good = scores(1).get(0);
        PollenEntry early = scored(NORTH, at(20, 10));
        PollenEntry elsewhere = scored(new HouseId("south"), at(2, 10));
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> keeper.enter(List.of(good, early, elsewhere)));
        assertEquals(
                List.of("at", "house"),
                refused.faults().stream().map(f -> f.place()).toList());
        assertEquals(List.of(), keeper.scores());
    }

    @Test
    void the_wall_has_the_newest_report_without_asking_for_it() {
        store(days(18, 21));
        keeper.start();
        await().atMost(Duration.ofSeconds(30))
                .until(() -> Optional.ofNullable(keeper.newest().get(NORTH))
                        .filter(report -> report.days().size() == 3)
                        .isPresent());
    }

    private PollenReport report() {
        return keeper.report(NORTH, Optional.empty(), Predictor.LIGHT_TO_SCORE).orElseThrow();
    }

    private void store(List<Reading> readings) {
        stores.readings().append(readings);
        keeper.stored(readings);
    }

    private static Instant at(int day, int hour) {
        return FIRST.plusDays(day).atTime(hour, 0).toInstant(ZoneOffset.UTC);
    }

    private static PollenEntry scored(HouseId house, Instant at) {
        return new PollenEntry.Scored(house, Optional.empty(), at, "Ida", PollenScore.CLEAR);
    }

    /** One score a day at ten: more pollen after brighter mornings, more or less. */
    private static List<PollenEntry> scores(int days) {
        List<PollenEntry> scores = new ArrayList<>();
        Random random = new Random(1);
        for (int day = 0; day < days; day++) {
            int score = (int) Math.min(3, Math.max(0, Math.round(4 * brightness(day) - 1 + random.nextGaussian())));
            scores.add(new PollenEntry.Scored(NORTH, Optional.empty(), at(day, 10), "Ida", PollenScore.of(score)));
        }
        return scores;
    }

    private static double brightness(int day) {
        return 0.3 + 0.7 * (day * 7 % 10) / 9;
    }

    /** Every ten minutes of some days: half of the light outdoors, 18 °C, 70 %RH. */
    private static List<Reading> days(int from, int to) {
        List<Reading> readings = new ArrayList<>();
        for (int day = from; day < to; day++) {
            for (Instant at = at(day, 0); at.isBefore(at(day + 1, 0)); at = at.plusSeconds(600)) {
                double clear = ClearSky.global(SITE, at).wattsPerSquareMetre() * Light.MICROMOLES_PER_GLOBAL_WATT;
                readings.add(reading(Quantity.LIGHT, at, 0.5 * brightness(day) * clear));
                readings.add(reading(Quantity.TEMPERATURE, at, 18));
                readings.add(reading(Quantity.HUMIDITY, at, 70));
            }
        }
        return readings;
    }

    private static Reading reading(Quantity quantity, Instant at, double value) {
        return Reading.of(new SeriesId(POST, quantity), at, value);
    }

    /** A second station of the same kind. */
    private final class LateStation implements AutoCloseable {
        private final SqliteStores its;
        private final PollenKeeper keeper;

        LateStation(Path file) {
            its = SqliteStores.open(file, clock);
            keeper = new PollenKeeper(
                    clock, STATION, HEAT, its::readings, its.pollen(), () -> Register.EMPTY, WatchSettings.USUAL);
        }

        void store(List<Reading> readings) {
            its.readings().append(readings);
            keeper.stored(readings);
        }

        PollenReport report() {
            return keeper.report(NORTH, Optional.empty(), Predictor.LIGHT_TO_SCORE)
                    .orElseThrow();
        }

        @Override
        public void close() {
            keeper.close();
            its.close();
        }
    }
}
