package bagward.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Finding;
import bagward.climate.FixedReadings;
import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A sensor of temperature and humidity, expected every ten minutes; the clocks go forward on 29 March. */
class SensorDayTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");
    private static final Instant NOON = Instant.parse("2026-03-30T10:00:00Z");
    private static final Sensor SENSOR = new Sensor(
            new SensorId("post"),
            "Post",
            new HouseId("north"),
            Optional.empty(),
            false,
            EnumSet.of(Quantity.TEMPERATURE, Quantity.HUMIDITY, Quantity.BATTERY),
            Duration.ofMinutes(10));

    private final List<Reading> readings = new ArrayList<>();

    @Test
    void a_sensor_that_was_always_heard_is_whole_also_on_the_short_day() {
        heard("2026-03-27T00:00:00Z", "2026-03-30T10:00:00Z");
        List<SensorDay> days = days(3);
        assertEquals(
                List.of(LocalDate.of(2026, 3, 30), LocalDate.of(2026, 3, 29), LocalDate.of(2026, 3, 28)),
                days.stream().map(SensorDay::date).toList());
        for (SensorDay day : days) {
            assertEquals(1, day.heard(), 1e-9);
            assertEquals(Duration.ZERO, day.longestSilence());
            assertEquals(List.of(), day.findings());
        }
    }

    @Test
    void a_silence_counts_from_three_intervals_after_the_last_reading() {
        heard("2026-03-29T22:00:00Z", "2026-03-30T02:00:00Z");
        heard("2026-03-30T05:30:00Z", "2026-03-30T10:00:00Z");
        SensorDay today = days(1).get(0);
        assertEquals(Duration.ofHours(3), today.longestSilence());
        assertEquals(0.75, today.heard(), 1e-9);
    }

    @Test
    void a_sensor_that_was_not_heard_at_all_is_silent_all_day() {
        SensorDay yesterday = days(2).get(1);
        assertEquals(0, yesterday.heard(), 1e-9);
        assertEquals(Duration.ofHours(23), yesterday.longestSilence());
    }

    @Test
    void days_before_the_first_reading_are_silent_too() {
        heard("2026-03-29T22:00:00Z", "2026-03-30T10:00:00Z");
        List<SensorDay> days = days(3);
        assertEquals(1, days.get(0).heard(), 1e-9);
        assertEquals(0, days.get(1).heard(), 1e-9);
        assertEquals(Duration.ofHours(24), days.get(2).longestSilence());
    }

    @Test
    void one_dead_quantity_is_a_silence_but_a_battery_that_is_not_reported_is_none() {
        for (Instant at = Instant.parse("2026-03-29T22:00:00Z"); at.isBefore(NOON); at = at.plusSeconds(600)) {
            readings.add(reading(Quantity.TEMPERATURE, at, 12.0 + at.getEpochSecond() / 600 % 7));
        }
        assertEquals(0, days(1).get(0).heard(), 1e-9);
    }

    @Test
    void flags_and_odd_values_are_counted_on_their_day() {
        heard("2026-03-28T23:00:00Z", "2026-03-30T10:00:00Z");
        Instant sunday = Instant.parse("2026-03-29T12:05:00Z");
        readings.add(new Reading(
                new SeriesId(SENSOR.id(), Quantity.HUMIDITY), sunday, 100, Set.of(ReadingFlag.HUMIDITY_CAPPED)));
        readings.add(reading(Quantity.TEMPERATURE, sunday, 61));
        SensorDay day = days(2).get(1);
        assertEquals(1, day.capped());
        assertTrue(day.findings().stream().anyMatch(f -> f.oddity() == Finding.Oddity.SUSPECT_VALUE));
        assertTrue(day.findings().stream().anyMatch(f -> f.oddity() == Finding.Oddity.STEP));
        assertEquals(0, days(2).get(0).capped());
        assertEquals(List.of(), days(2).get(0).findings());
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        heard("2026-03-28T23:00:00Z", "2026-03-29T08:00:00Z");
        heard("2026-03-29T14:00:00Z", "2026-03-30T09:00:00Z");
        List<SensorDay> inOrder = days(3);
        Collections.shuffle(readings, new Random(11));
        assertEquals(inOrder, days(3));
    }

    private List<SensorDay> days(int days) {
        return SensorDay.last(SENSOR, new FixedReadings(readings), NOON, ZONE, days);
    }

    private void heard(String from, String to) {
        for (Instant at = Instant.parse(from); !at.isAfter(Instant.parse(to)); at = at.plusSeconds(600)) {
            long step = at.getEpochSecond() / 600 % 7;
            readings.add(reading(Quantity.TEMPERATURE, at, 12 + 0.2 * step));
            readings.add(reading(Quantity.HUMIDITY, at, 70.0 + step));
        }
    }

    private static Reading reading(Quantity quantity, Instant at, double value) {
        return Reading.of(new SeriesId(SENSOR.id(), quantity), at, value);
    }
}
