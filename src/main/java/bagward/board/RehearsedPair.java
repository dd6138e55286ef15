package bagward.board;

import bagward.alarm.AlarmKey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An alarm of one set of rules, or of another, or of both: then it is of the same rule and subject, and stood at the same
 * time for a while.
 *
 * @param first what the first set would have raised
 * @param second what the second set would have raised
 */
public record RehearsedPair(Optional<RehearsedAlarm> first, Optional<RehearsedAlarm> second) {
    /** The alarms of two sets side by side, oldest first. */
    public static List<RehearsedPair> of(Rehearsed first, Rehearsed second) {
        Map<AlarmKey, List<RehearsedAlarm>> left = new HashMap<>();
        second.alarms()
                .forEach(alarm -> left.computeIfAbsent(alarm.key(), k -> new ArrayList<>())
                        .add(alarm));
        List<RehearsedPair> pairs = new ArrayList<>();
        for (RehearsedAlarm alarm : first.alarms()) {
            List<RehearsedAlarm> others = left.getOrDefault(alarm.key(), List.of());
            Optional<RehearsedAlarm> met = others.stream().filter(alarm::meets).findFirst();
            met.ifPresent(others::remove);
            pairs.add(new RehearsedPair(Optional.of(alarm), met));
        }
        left.values().stream()
                .flatMap(List::stream)
                .forEach(alarm -> pairs.add(new RehearsedPair(Optional.empty(), Optional.of(alarm))));
        pairs.sort(Comparator.comparing((RehearsedPair pair) -> pair.any().raised())
                .thenComparing(pair -> pair.any().key()));
        return pairs;
    }

    /** An alarm with nothing beside it. */
    public static RehearsedPair alone(RehearsedAlarm alarm) {
        return new RehearsedPair(Optional.of(alarm), Optional.empty());
    }

    /** The alarm of the first set, or else that of the second. */
    public RehearsedAlarm any() {
        return first.or(() -> second).orElseThrow();
    }

    /** Whether both sets raise it. */
    public boolean both() {
        return first.isPresent() && second.isPresent();
    }
}
