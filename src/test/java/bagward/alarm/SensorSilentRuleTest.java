package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sensor of two quantities, expected every minute; silent after three of them; off-delay five minutes. */
class SensorSilentRuleTest {
    private static final Instant START = Instant.parse("2026-02-03T06:00:00Z");
    private static final Sensor SENSOR = NorthPost.measuring(Quantity.TEMPERATURE, Quantity.HUMIDITY);
    private static final Rule RULE = new Rule(
            new RuleId("silent"),
            "Silent",
            RuleKind.SENSOR_SILENT,
            3,
            0,
            Duration.ZERO,
            Duration.ofMinutes(5),
            Priority.MEDIUM,
            Script.CARD);

    private final Heard heard = new Heard();

    @Test
    void a_sensor_that_is_heard_is_not_silent() {
        hear(0, 30, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        Verdict verdict = at(30.5);
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
        assertEquals("heard 12 s ago, expected every 1 min", at(30.2).message());
    }

    @Test
    void silence_starts_when_patience_ends() {
        hear(0, 30, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        assertEquals(Verdict.Outcome.CLEAR, at(33).outcome());
        Verdict verdict = at(42);
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(minute(33), verdict.since());
        assertEquals("no temperature and humidity from North post for 12 min, expected every 1 min", verdict.message());
    }

    @Test
    void one_dead_quantity_is_enough() {
        hear(0, 30, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        hear(31, 60, Quantity.TEMPERATURE);
        Verdict verdict = at(60);
        assertEquals(minute(33), verdict.since());
        assertEquals("no humidity from North post for 30 min, expected every 1 min", verdict.message());
    }

    @Test
    void the_off_delay_runs_from_the_first_reading_after_the_silence() {
        hear(0, 10, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        hear(30, 33, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        assertEquals(minute(30), at(33).since());
        AlarmBook raised = step(AlarmBook.EMPTY, 20);
        assertEquals('U', letter(step(raised, 33)));
        hear(34, 40, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        assertEquals('R', letter(step(raised, 36)));
    }

    @Test
    void readings_that_come_late_undo_the_silence() {
        hear(0, 10, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        assertEquals(Verdict.Outcome.HOLDS, at(40).outcome());
        AlarmBook raised = step(AlarmBook.EMPTY, 40);
        hear(11, 40, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        Verdict verdict = at(40);
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
        assertEquals('R', letter(step(raised, 40)));
    }

    @Test
    void a_sensor_that_was_never_heard_is_missed_from_when_it_was_expected() {
        Verdict verdict = at(9, minute(5));
        assertEquals(minute(8), verdict.since());
        assertEquals("no temperature and humidity from North post so far, expected every 1 min", verdict.message());
    }

    @Test
    void silence_before_a_spare_was_lent_does_not_count() {
        hear(0, 10, Quantity.TEMPERATURE, Quantity.HUMIDITY);
        assertEquals(Verdict.Outcome.CLEAR, at(102, minute(100)).outcome());
        assertEquals(minute(103), at(110, minute(100)).since());
    }

    private Verdict at(double minute) {
        return at(minute, Instant.MIN);
    }

    private Verdict at(double minute, Instant expectedFrom) {
        return new SensorSilentRule(RULE, heard, minute(minute)).judge(SENSOR, expectedFrom);
    }

    private AlarmBook step(AlarmBook book, double minute) {
        return AlarmEngine.step(book, minute(minute), List.of(at(minute)), List.of(RULE))
                .book();
    }

    private static char letter(AlarmBook book) {
        return Script.letter(book.alarms().stream().findFirst());
    }

    private static Instant minute(double minute) {
        return START.plusSeconds(Math.round(60 * minute));
    }

    private void hear(int from, int to, Quantity... quantities) {
        for (int i = from; i <= to; i++) {
            for (Quantity quantity : quantities) {
                heard.all.add(Reading.of(new SeriesId(SENSOR.id(), quantity), minute(i), 20));
            }
        }
    }

    /** Readings in a list. */
    private static final class Heard implements ReadingSource {
        private final List<Reading> all = new ArrayList<>();

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return all.stream()
                    .filter(r -> r.series().equals(series)
                            && !r.measuredAt().isBefore(from)
                            && r.measuredAt().isBefore(to))
                    .sorted(Comparator.comparing(Reading::measuredAt))
                    .toList();
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return all.stream()
                    .filter(r -> r.series().equals(series) && !r.measuredAt().isAfter(atOrBefore))
                    .max(Comparator.comparing(Reading::measuredAt));
        }
    }
}
