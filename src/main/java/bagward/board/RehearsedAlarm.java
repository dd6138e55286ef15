package bagward.board;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An alarm that would have come.
 *
 * @param key rule and subject
 * @param raised when
 * @param over when its condition was gone, the bag came off, or it was suppressed by design; empty if it stood to the end
 * @param message the sentence at the time it was raised
 */
public record RehearsedAlarm(AlarmKey key, Instant raised, Optional<Instant> over, String message) {
    /** The alarms of events in order of time. */
    static List<RehearsedAlarm> of(List<AlarmEvent> events) {
        List<RehearsedAlarm> alarms = new ArrayList<>();
        Map<AlarmKey, AlarmEvent> open = new LinkedHashMap<>();
        for (AlarmEvent event : events) {
            if (event.to() == AlarmPhase.UNACKNOWLEDGED) {
                open.put(event.key(), event);
            } else if (open.containsKey(event.key())) {
                alarms.add(of(open.remove(event.key()), Optional.of(event.at())));
            }
        }
        open.values().forEach(event -> alarms.add(of(event, Optional.empty())));
        return alarms;
    }

    private static RehearsedAlarm of(AlarmEvent raised, Optional<Instant> over) {
        return new RehearsedAlarm(raised.key(), raised.at(), over, raised.message());
    }

    /** Whether another one is of the same rule and subject and stood at the same time for a while. */
    boolean meets(RehearsedAlarm other) {
        return key.equals(other.key) && !endsBefore(other) && !other.endsBefore(this);
    }

    private boolean endsBefore(RehearsedAlarm other) {
        return over.filter(end -> !end.isAfter(other.raised)).isPresent();
    }
}
