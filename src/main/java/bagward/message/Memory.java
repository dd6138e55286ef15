package bagward.message;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.RuleId;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What one person was told, asked for in the ways that composing needs. */
final class Memory {
    private final String person;
    private final Sent sent;
    private final Map<AlarmKey, Instant> raised = new HashMap<>();
    private final Map<About, Instant> rules = new HashMap<>();

    Memory(Sent sent, Person person) {
        this.sent = sent;
        this.person = person.name();
        sent.told().forEach((told, at) -> {
            if (told.person().equals(this.person)) {
                rules.merge(new About(told.alarm().rule(), told.news()), at, Memory::later);
                if (told.news() == Told.News.RAISED) {
                    raised.merge(told.alarm(), at, Memory::later);
                }
            }
        });
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    /** The state that an alarm is in, as something to tell. */
    Told state(Alarm alarm, Told.News news, int number) {
        return new Told(person, alarm.key(), alarm.raisedAt().orElse(alarm.since()), news, number);
    }

    boolean was(Told told) {
        return sent.toldAt(told).isPresent();
    }

    /** When this occurrence of an alarm was first told, at once or in the second turn. */
    Optional<Instant> first(Alarm alarm) {
        return sent.toldAt(state(alarm, Told.News.RAISED, 1))
                .or(() -> sent.toldAt(state(alarm, Told.News.SECOND_TURN, 1)));
    }

    /** How often this occurrence was told again. */
    int reminders(Alarm alarm) {
        int told = 0;
        while (was(state(alarm, Told.News.REMINDED, told + 1))) {
            told++;
        }
        return told;
    }

    /** When this occurrence was last told in any way. */
    Optional<Instant> last(Alarm alarm) {
        int reminders = reminders(alarm);
        return reminders == 0 ? first(alarm) : sent.toldAt(state(alarm, Told.News.REMINDED, reminders));
    }

    /** When anything of a kind was last told of a rule. */
    Optional<Instant> last(RuleId rule, Told.News news) {
        return Optional.ofNullable(rules.get(new About(rule, news)));
    }

    /** When an alarm was last told as raised, in whatever occurrence. */
    Optional<Instant> lastRaised(AlarmKey key) {
        return Optional.ofNullable(raised.get(key));
    }

    private record About(RuleId rule, Told.News news) {}
}
