package bagward.alarm;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much the alarms ask of people.
 *
 * @param raisedPerDay alarms raised on each civil day on which there was one; asking again does not count
 * @param perRule how often each rule raised an alarm
 * @param mostFrequent the alarms that were raised most often, at most ten, each with how often
 * @param chattering alarms that were raised at least {@link #CHATTER} times within {@link #CHATTER_WINDOW}
 * @param standing listed alarms whose condition has held for more than {@link #STANDING_FROM}
 * @param timeToAcknowledge median time from raised to confirmed; empty if none was confirmed
 */
public record AlarmLoad(
        SortedMap<LocalDate, Integer> raisedPerDay,
        SortedMap<RuleId, Integer> perRule,
        List<Count> mostFrequent,
        List<AlarmKey> chattering,
        List<Alarm> standing,
        Optional<Duration> timeToAcknowledge) {
    /** Raised so often within the window is chattering. Ours: sensors that report every few minutes cannot be faster. */
    public static final int CHATTER = 3;

    /** The window for chattering. Ours, see {@link #CHATTER}. */
    public static final Duration CHATTER_WINDOW = Duration.ofHours(6);

    /** Standing from a day on, as the alarm management standards count it (ISA-18.2, from secondary texts). */
    public static final Duration STANDING_FROM = Duration.ofHours(24);

    private static final int MOST = 10;

    /** Copies the collections. */
    public AlarmLoad {
        raisedPerDay = Collections.unmodifiableSortedMap(new TreeMap<>(raisedPerDay));
        perRule = Collections.unmodifiableSortedMap(new TreeMap<>(perRule));
        mostFrequent = List.copyOf(mostFrequent);
        chattering = List.copyOf(chattering);
        standing = List.copyOf(standing);
    }

    /**
     * The load of a stretch of the journal.
     *
     * @param events in any order
     * @param book the alarms as they stand now
     * @param now for how long they have stood
     * @param zone of the civil days
     */
    public static AlarmLoad of(List<AlarmEvent> events, AlarmBook book, Instant now, ZoneId zone) {
        SortedMap<LocalDate, Integer> perDay = new TreeMap<>();
        SortedMap<RuleId, Integer> perRule = new TreeMap<>();
        Map<AlarmKey, List<Instant>> raised = new TreeMap<>();
        Map<AlarmKey, Instant> open = new TreeMap<>();
        List<Duration> waits = new ArrayList<>();
        events.stream().sorted(Comparator.comparing(AlarmEvent::at)).forEach(event -> {
            if (raises(event)) {
                perDay.merge(event.at().atZone(zone).toLocalDate(), 1, Integer::sum);
                perRule.merge(event.key().rule(), 1, Integer::sum);
                raised.computeIfAbsent(event.key(), k -> new ArrayList<>()).add(event.at());
                open.put(event.key(), event.at());
            } else if (confirms(event)) {
                Optional.ofNullable(open.remove(event.key()))
                        .ifPresent(from -> waits.add(Duration.between(from, event.at())));
            }
        });
        return new AlarmLoad(perDay, perRule, most(raised), chattering(raised), standing(book, now), median(waits));
    }

    /** How many alarms were raised in all. */
    public int raised() {
        return perRule.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static boolean raises(AlarmEvent event) {
        return event.to() == AlarmPhase.UNACKNOWLEDGED && event.from() != AlarmPhase.ACKNOWLEDGED;
    }

    private static boolean confirms(AlarmEvent event) {
        boolean returned = event.from() == AlarmPhase.RETURNED_UNACKNOWLEDGED && event.to() == AlarmPhase.NORMAL;
        return event.to() == AlarmPhase.ACKNOWLEDGED || (returned && !event.by().equals(AlarmEngine.RULE));
    }

    private static List<Count> most(Map<AlarmKey, List<Instant>> raised) {
        return raised.entrySet().stream()
                .map(entry -> new Count(entry.getKey(), entry.getValue().size()))
                .sorted(Comparator.comparingInt(Count::times).reversed().thenComparing(Count::key))
                .limit(MOST)
                .toList();
    }

    private static List<AlarmKey> chattering(Map<AlarmKey, List<Instant>> raised) {
        return raised.entrySet().stream()
                .filter(entry -> chatters(entry.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static boolean chatters(List<Instant> times) {
        for (int i = CHATTER - 1; i < times.size(); i++) {
            if (!times.get(i - CHATTER + 1).plus(CHATTER_WINDOW).isBefore(times.get(i))) {
                return true;
            }
        }
        return false;
    }

    private static List<Alarm> standing(AlarmBook book, Instant now) {
        return book.alarms().stream()
                .filter(alarm -> alarm.phase().standing())
                .filter(alarm -> alarm.since().plus(STANDING_FROM).isBefore(now))
                .toList();
    }

    private static Optional<Duration> median(List<Duration> waits) {
        List<Duration> sorted = waits.stream().sorted().toList();
        if (sorted.isEmpty()) {
            return Optional.empty();
        }
        Duration low = sorted.get((sorted.size() - 1) / 2);
        Duration high = sorted.get(sorted.size() / 2);
        return Optional.of(low.plus(high).dividedBy(2));
    }

    /**
     * How often an alarm was raised.
     *
     * @param key the alarm
     * @param times how often
     */
    public record Count(AlarmKey key, int times) {}
}
