package bagward.board;

import bagward.alarm.Rule;
import bagward.alarm.SpellTimes;
import bagward.mould.Reach;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.LongStream;

/**
 * The instants at which what rules say of one bag may change by its own climate and dates; between two of them only the
 * wording does. Immutable.
 */
final class VerdictTimes {
    private static final double MILLIS_A_DAY = 86_400_000;

    private final long[] millis;

    private VerdictTimes(long[] millis) {
        this.millis = millis;
    }

    /** The instants of a bag as rules see it. */
    static VerdictTimes of(SeenBag bag, List<Rule> rules) {
        LongStream.Builder all = LongStream.builder();
        for (Rule rule : rules) {
            tell(bag.seenBy(rule), rule, at -> all.add(at.toEpochMilli()));
        }
        return new VerdictTimes(all.build().sorted().distinct().toArray());
    }

    private static void tell(JudgedBag bag, Rule general, Consumer<Instant> times) {
        Rule rule = bag.here(general);
        switch (rule.kind()) {
            case BAG_DAMP -> SpellTimes.tell(bag.climate().humidity().middle(), rule.limit(), rule.deadband(), times);
            case BAG_HOT -> SpellTimes.tell(bag.climate().temperature().middle(), rule.limit(), rule.deadband(), times);
            case BAG_DUE -> times.accept(bag.due().plusMillis(Math.round(rule.limit() * MILLIS_A_DAY)));
            case BAG_MOULD -> {
                SpellTimes.tell(bag.climate().humidity().middle(), Double.POSITIVE_INFINITY, 0, times);
                bag.course().high().map(Reach::at).ifPresent(times);
            }
            case BAG_SHUT, BAG_OFF -> {}
            case DRYING_DAMP,
                    SENSOR_SILENT,
                    SENSOR_BATTERY,
                    SENSOR_CLOCK,
                    STORE_AWAY,
                    SPOOL_FILLING,
                    DISK_FILLING,
                    STATION_CLOCK -> {}
        }
    }

    /** The first of them after an instant; {@link Instant#MAX} if there is none. */
    Instant after(Instant instant) {
        int found = Arrays.binarySearch(millis, instant.toEpochMilli() + 1);
        int next = found < 0 ? -found - 1 : found;
        return next < millis.length ? Instant.ofEpochMilli(millis[next]) : Instant.MAX;
    }
}
