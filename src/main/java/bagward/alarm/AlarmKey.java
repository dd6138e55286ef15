package bagward.alarm;

import java.util.Comparator;

/**
 * Identity of an alarm.
 *
 * @param rule which rule
 * @param subject about what
 */
public record AlarmKey(RuleId rule, Subject subject) implements Comparable<AlarmKey> {
    private static final Comparator<AlarmKey> ORDER = Comparator.comparing(AlarmKey::rule)
            .thenComparing(key -> key.subject().key());

    @Override
    public int compareTo(AlarmKey other) {
        return ORDER.compare(this, other);
    }
}
