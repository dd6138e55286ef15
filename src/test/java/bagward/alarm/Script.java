package bagward.alarm;

import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plays a written script minute by minute against the alarm engine.
 *
 * <p>Verdicts: {@code #} holds, {@code .} clear, {@code _} no data, {@code x} suppressed, {@code o}
 * left to another alarm, {@code -} subject gone. Acts:
 * {@code a} acknowledge. Phases: {@code .} normal, {@code P} pending, {@code U} unacknowledged, {@code A} acknowledged,
 * {@code R} returned unacknowledged, {@code S} suppressed, {@code H} shelved, {@code O} out of service.
 */
final class Script {
    static final Instant START = Instant.parse("2026-02-03T06:00:00Z");
    static final ActionCard CARD = new ActionCard("Swap the bag", "wet buds rot", "today", "dry film", "");
    static final Rule RULE = new Rule(
            new RuleId("damp"),
            "Bag damp",
            RuleKind.BAG_DAMP,
            90,
            2,
            Duration.ofMinutes(3),
            Duration.ofMinutes(2),
            Priority.LOW,
            CARD);
    static final AlarmKey KEY = new AlarmKey(RULE.id(), new Subject.Bag(new TagCode("A-1")));
    static final AlarmKey OTHER = new AlarmKey(RULE.id(), new Subject.Bag(new TagCode("B-2")));

    private final Rule rule;
    private final String verdicts;

    Script(Rule rule, String verdicts) {
        this.rule = rule;
        this.verdicts = verdicts;
    }

    static Instant minute(int i) {
        return START.plusSeconds(60L * i);
    }

    /** What the rule says at minute i; a spell of one outcome is not ended by missing data. */
    List<Verdict> at(int i) {
        char now = verdicts.charAt(i);
        if (now == '-') {
            return List.of();
        }
        int since = i;
        while (since > 0 && sameSpell(verdicts.charAt(since - 1), now)) {
            since--;
        }
        while (verdicts.charAt(since) == '_' && since < i) {
            since++;
        }
        Verdict.Outcome outcome = switch (now) {
            case '#' -> Verdict.Outcome.HOLDS;
            case '.' -> Verdict.Outcome.CLEAR;
            case 'x' -> Verdict.Outcome.SUPPRESSED;
            case 'o' -> Verdict.Outcome.COVERED;
            default -> Verdict.Outcome.UNKNOWN;
        };
        return List.of(new Verdict(KEY, outcome, minute(since), Double.NaN, "as scripted"));
    }

    /** A condition that another alarm calls for holds all the same. */
    private static boolean sameSpell(char before, char now) {
        return before == now || before == '_' || ("#o".indexOf(before) >= 0 && "#o".indexOf(now) >= 0);
    }

    Step step(AlarmBook book, int i) {
        return AlarmEngine.step(book, minute(i), at(i), List.of(rule));
    }

    /** The phases after each minute; an act happens at the end of its minute. */
    String play(String acts) {
        AlarmBook book = AlarmBook.EMPTY;
        StringBuilder phases = new StringBuilder();
        for (int i = 0; i < verdicts.length(); i++) {
            book = step(book, i).book();
            if (i < acts.length() && acts.charAt(i) == 'a') {
                book = AlarmEngine.acknowledge(book, Set.of(KEY), "Mirja", minute(i))
                        .book();
            }
            phases.append(letter(book.find(KEY)));
        }
        return phases.toString();
    }

    static char letter(Optional<Alarm> alarm) {
        return alarm.map(a -> switch (a.phase()) {
                    case NORMAL -> '.';
                    case PENDING -> 'P';
                    case UNACKNOWLEDGED -> 'U';
                    case ACKNOWLEDGED -> 'A';
                    case RETURNED_UNACKNOWLEDGED -> 'R';
                    case SHELVED -> 'H';
                    case SUPPRESSED -> 'S';
                    case OUT_OF_SERVICE -> 'O';
                })
                .orElse('.');
    }
}
