package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.RegularSeries;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limit 90, deadband 2; one value a minute, {@code _} for a gap. */
class SpellTest {
    private static final Instant START = Instant.parse("2026-02-03T00:00:00Z");

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            starts where the limit is reached        | 85 89 90 91        | HOLDS   | 2 | 0
            not ended within the deadband            | 91 89 88 89        | HOLDS   | 0 | 0
            ended below the deadband                 | 91 89 87.9 89      | CLEAR   | 2 | 0
            within the deadband from the start       | 89 89 89           | CLEAR   | 0 | 0
            clear from the start                     | 80 85 80           | CLEAR   | 0 | 0
            the newest of two spells                 | 91 80 91 92        | HOLDS   | 2 | 0
            a gap does not end a spell but counts    | 91 _ _ 92          | HOLDS   | 0 | 2
            a gap at the start is not of the spell   | _ _ 91 92          | HOLDS   | 2 | 0
            a gap before the rise is not of it       | 80 _ _ 91          | HOLDS   | 3 | 0
            a gap does not end a clear spell         | 80 _ 80            | CLEAR   | 0 | 1
            a short silence at the end keeps it      | 91 91 _ _          | HOLDS   | 0 | 2
            a long silence at the end is not known   | 91 _ _ _ _ _ _ _ _ _ _ _ _ _ | UNKNOWN | 1 | 0
            nothing known at all                     | _ _ _              | UNKNOWN | 0 | 0
            """)
    void the_newest_spell(String name, String values, Verdict.Outcome outcome, int since, long unknownMinutes) {
        double[] series = Arrays.stream(values.split(" "))
                .mapToDouble(v -> v.equals("_") ? Double.NaN : Double.parseDouble(v))
                .toArray();
        Spell spell = spell(series, series.length - 1);
        assertEquals(outcome, spell.outcome(), name);
        assertEquals(START.plusSeconds(60L * since), spell.since(), name);
        assertEquals(Duration.ofMinutes(unknownMinutes), spell.unknown(), name);
    }

    @Test
    void cells_after_now_do_not_count() {
        assertEquals(
                Verdict.Outcome.CLEAR, spell(new double[] {80, 80, 99, 99}, 1).outcome());
    }

    @Test
    void an_empty_series_is_not_known() {
        assertEquals(Verdict.Outcome.UNKNOWN, spell(new double[] {}, 0).outcome());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void agrees_with_walking_forward_through_the_series(long seed) {
        Random random = new Random(seed);
        double[] values = new double[300];
        for (int i = 0; i < values.length; i++) {
            values[i] = random.nextInt(5) == 0 ? Double.NaN : 86 + random.nextInt(7);
        }
        Verdict.Outcome state = Verdict.Outcome.UNKNOWN;
        int since = 0;
        for (int i = 0; i < values.length; i++) {
            Verdict.Outcome next = next(state, values[i]);
            since = next == state ? since : i;
            state = next;
            if (!Double.isNaN(values[i])) {
                Spell spell = spell(values, i);
                assertEquals(state, spell.outcome());
                assertEquals(START.plusSeconds(60L * since), spell.since());
            }
        }
    }

    private static Verdict.Outcome next(Verdict.Outcome state, double value) {
        if (value >= 90) {
            return Verdict.Outcome.HOLDS;
        }
        boolean falls = value < 88 || (state == Verdict.Outcome.UNKNOWN && !Double.isNaN(value));
        return falls ? Verdict.Outcome.CLEAR : state;
    }

    private static Spell spell(double[] values, int minute) {
        RegularSeries series = RegularSeries.of(Bags.grid(START, values.length), values);
        return Spell.newest(series, 90, 2, START.plusSeconds(60L * minute));
    }
}
