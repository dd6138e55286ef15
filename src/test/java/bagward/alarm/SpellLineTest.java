package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limit 90, deadband 2; one value a minute. */
class SpellLineTest {
    private static final Instant START = Instant.parse("2026-02-03T00:00:00Z");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void it_says_of_every_minute_what_looking_back_from_there_says(long seed) {
        RegularSeries series = series(random(seed, 500));
        SpellLine line = new SpellLine(series, 90, 2);
        for (int i = -3; i < 520; i++) {
            Instant now = minute(i);
            Spell back = Spell.newest(series, 90, 2, now);
            assertEquals(
                    new Spell(back.outcome(), back.since(), back.value(), Duration.ZERO), line.at(now), "minute " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_span_is_what_lies_between_the_beginnings_of_two_spells(long seed) {
        RegularSeries series = series(random(seed, 500));
        SpellLine line = new SpellLine(series, 90, 2);
        List<HeldSpan> spans = line.within(START, minute(500));
        assertTrue(spans.size() > 2, () -> "spans to look at: " + spans.size());
        for (int i = 0; i < 500; i++) {
            Instant now = minute(i);
            Spell spell = line.at(now);
            boolean within = spans.stream().anyMatch(span -> !now.isBefore(span.from()) && now.isBefore(span.to()));
            if (spell.outcome() != Verdict.Outcome.UNKNOWN) {
                assertEquals(spell.outcome() == Verdict.Outcome.HOLDS, within, "minute " + i);
            }
            line.endedBy(now)
                    .ifPresent(end -> assertTrue(
                            spans.stream().anyMatch(span -> span.to().equals(end)), () -> "ended at " + end));
        }
    }

    @Test
    void spans_are_cut_at_the_ends_of_the_time_that_is_asked_for() {
        SpellLine line = new SpellLine(series(95, 95, 95, 80, 95, 95), 90, 2);
        assertEquals(
                List.of(new HeldSpan(minute(1), minute(3)), new HeldSpan(minute(4), minute(5))),
                line.within(minute(1), minute(5)));
        assertEquals(List.of(), line.within(minute(3), minute(4)));
    }

    @Test
    void spans_count_at_once_only_while_they_overlap() {
        HeldSpan early = new HeldSpan(minute(0), minute(10));
        HeldSpan later = new HeldSpan(minute(10), minute(20));
        HeldSpan across = new HeldSpan(minute(5), minute(15));
        assertEquals(0, HeldSpan.mostAtOnce(List.of()));
        assertEquals(1, HeldSpan.mostAtOnce(List.of(later, early)));
        assertEquals(2, HeldSpan.mostAtOnce(List.of(later, early, across)));
    }

    private static double[] random(long seed, int cells) {
        Random random = new Random(seed);
        double[] values = new double[cells];
        double value = 89;
        for (int i = 0; i < cells; i++) {
            value = Math.max(84, Math.min(94, value + random.nextGaussian()));
            boolean away = i % 100 > 70 && i % 100 < 70 + random.nextInt(30);
            values[i] = away || random.nextInt(6) == 0 ? Double.NaN : value;
        }
        return values;
    }

    private static RegularSeries series(double... values) {
        return RegularSeries.of(new TimeGrid(START, Duration.ofMinutes(1), values.length), values);
    }

    private static Instant minute(int i) {
        return START.plusSeconds(60L * i);
    }
}
