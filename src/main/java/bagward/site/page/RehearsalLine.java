package bagward.site.page;

import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.board.Board;
import bagward.board.RehearsedAlarm;
import bagward.board.RehearsedPair;
import bagward.site.view.AlarmWords;
import bagward.site.view.Words;
import bagward.watch.rehearsal.RehearsalResult;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * An alarm that would have come.
 *
 * @param rule name of its rule
 * @param subject what it is about
 * @param address page of that; empty if it has none
 * @param in which set of rules raises it: "both", "changed only" or "running only"; empty if one set was tried
 * @param raised when
 * @param over when it was over, or "stood to the end"
 * @param message its sentence
 */
public record RehearsalLine(
        String rule, String subject, String address, String in, String raised, String over, String message) {
    /** The alarms of a result, newest first. */
    static List<RehearsalLine> of(Board board, RehearsalResult result) {
        List<Rule> rules =
                result.sets().stream().flatMap(set -> set.rules().stream()).toList();
        List<RehearsedPair> pairs = new ArrayList<>(result.pairs());
        Collections.reverse(pairs);
        boolean two = result.sets().size() > 1;
        return pairs.stream().map(pair -> of(board, rules, pair, two)).toList();
    }

    private static RehearsalLine of(Board board, List<Rule> rules, RehearsedPair pair, boolean two) {
        AlarmKey key = pair.any().key();
        return new RehearsalLine(
                AlarmWords.rule(rules, key.rule()),
                AlarmWords.subject(board, key.subject()),
                address(key.subject()),
                two ? in(pair) : "",
                times(board, pair),
                pair.any()
                        .over()
                        .map(over -> Words.dayAndClock(over, board.zone()))
                        .orElse("stood to the end"),
                pair.any().message());
    }

    /** Which set of rules raises it. */
    public static String in(RehearsedPair pair) {
        return pair.both() ? "both" : pair.first().isPresent() ? "changed only" : "running only";
    }

    /** Both times, where the sets raise it at different ones. */
    private static String times(Board board, RehearsedPair pair) {
        String first = Words.dayAndClock(pair.any().raised(), board.zone());
        Optional<String> other = pair.second()
                .filter(second -> pair.both())
                .map(RehearsedAlarm::raised)
                .map(at -> Words.dayAndClock(at, board.zone()))
                .filter(at -> !at.equals(first));
        return other.map(at -> first + " (running: " + at + ")").orElse(first);
    }

    private static String address(Subject subject) {
        if (subject instanceof Subject.Bag bag) {
            return "/bag/" + bag.tag();
        }
        return subject instanceof Subject.OfSensor of ? "/sensor/" + of.sensor() : "";
    }
}
