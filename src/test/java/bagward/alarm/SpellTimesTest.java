package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limit 90, deadband 2; one value a minute, looked at each half minute. */
class SpellTimesTest {
    private static final Instant START = Instant.parse("2026-02-03T00:00:00Z");
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration LOOK = Duration.ofSeconds(30);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void tell_just_the_instants_at_which_the_newest_spell_is_another_one(long seed) {
        RegularSeries series = wandering(new Random(seed));
        List<Instant> told = new ArrayList<>();
        SpellTimes.tell(series, 90, 2, told::add);
        assertTrue(told.size() > 10, () -> "too few to show anything: " + told);
        assertEquals(told.stream().map(SpellTimesTest::nextLook).distinct().toList(), changes(series));
    }

    private static List<Instant> changes(RegularSeries series) {
        List<Instant> changes = new ArrayList<>();
        Spell before = Spell.newest(series, 90, 2, START.minus(MINUTE));
        Instant end = series.grid().end().plus(Duration.ofHours(1));
        for (Instant now = START; now.isBefore(end); now = now.plus(LOOK)) {
            Spell spell = Spell.newest(series, 90, 2, now);
            if (spell.outcome() != before.outcome() || !spell.since().equals(before.since())) {
                changes.add(now);
            }
            before = spell;
        }
        return changes;
    }

    private static Instant nextLook(Instant told) {
        long seconds = Math.floorDiv(told.toEpochMilli() + 29_999, 30_000) * 30;
        return Instant.ofEpochSecond(seconds);
    }

    /** Wanders about the limit with short and long gaps. */
    private static RegularSeries wandering(Random random) {
        double[] values = new double[2_000];
        double value = 88 + 4 * random.nextDouble();
        int gap = 0;
        for (int i = 0; i < values.length; i++) {
            value += 0.1 * (89 - value) + random.nextGaussian();
            gap = gap > 0 ? gap - 1 : random.nextInt(50) == 0 ? random.nextInt(25) : 0;
            values[i] = gap > 0 ? Double.NaN : value;
        }
        return RegularSeries.of(new TimeGrid(START, MINUTE, values.length), values);
    }
}
