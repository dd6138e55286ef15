package bagward.store.influx;

import bagward.climate.SensorId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A stretch of time that is looked up with one question.
 *
 * @param first its first instant
 * @param last its last instant
 * @param sensors whose readings are wanted
 */
record Stretch(Instant first, Instant last, Set<SensorId> sensors) {
    /** Two times further apart than this are asked for apart: little lies between them that is not wanted. */
    private static final Duration WIDEST_GAP = Duration.ofMinutes(10);

    /** Keeps one answer short: 200 sensors with 3 quantities a minute give 36 000 rows. */
    private static final Duration LONGEST = Duration.ofHours(1);

    /** The stretches that cover some readings. */
    static List<Stretch> covering(Collection<Slot> wanted) {
        List<Slot> sorted =
                wanted.stream().sorted(Comparator.comparing(Slot::at)).toList();
        List<Stretch> stretches = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            if (i == sorted.size() || parts(sorted.get(start), sorted.get(i - 1), sorted.get(i))) {
                stretches.add(of(sorted.subList(start, i)));
                start = i;
            }
        }
        return stretches;
    }

    /** Whether it is but one millisecond. */
    boolean isInstant() {
        return last.equals(first);
    }

    /** Its first and its second half; of a stretch that is longer than a millisecond. */
    List<Stretch> halves() {
        Instant middle = Instant.ofEpochMilli(Math.floorDiv(first.toEpochMilli() + last.toEpochMilli(), 2));
        return List.of(new Stretch(first, middle, sensors), new Stretch(middle.plusMillis(1), last, sensors));
    }

    private static boolean parts(Slot first, Slot before, Slot next) {
        return next.at().isAfter(before.at().plus(WIDEST_GAP))
                || next.at().isAfter(first.at().plus(LONGEST));
    }

    private static Stretch of(List<Slot> slots) {
        Set<SensorId> sensors = new TreeSet<>();
        slots.forEach(slot -> sensors.add(slot.series().sensor()));
        return new Stretch(slots.get(0).at(), slots.get(slots.size() - 1).at(), sensors);
    }
}
