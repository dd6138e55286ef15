package bagward.site.page;

import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.board.Board;
import bagward.board.Rehearsed;
import bagward.site.view.AlarmWords;
import bagward.site.view.Words;
import bagward.watch.rehearsal.RehearsalOrder;
import bagward.watch.rehearsal.RehearsalResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * What came of a rehearsal.
 *
 * @param sets names of the sets of rules, one or two
 * @param summary lines about each set as a whole
 * @param perRule how often each rule would have called
 * @param alarms the alarms, newest first, no more than fit
 * @param count how many there are in all
 * @param bagDays how long bags hung, days of all together
 */
public record RehearsalOutcome(
        List<String> sets,
        List<Line> summary,
        List<Line> perRule,
        List<RehearsalLine> alarms,
        int count,
        String bagDays) {
    private static final int MOST_LINES = 200;

    /**
     * A line with a value for each set.
     *
     * @param name of what
     * @param priority of a rule in words; empty for what is none
     * @param values one for each set
     */
    public record Line(String name, String priority, List<String> values) {}

    /** The outcome of a result. */
    static RehearsalOutcome of(Board board, RehearsalOrder order, RehearsalResult result) {
        List<String> sets = result.sets().size() > 1
                ? List.of("Changed", "Running")
                : List.of(order.text().isBlank() ? "Running" : "Changed");
        List<RehearsalLine> alarms = RehearsalLine.of(board, result);
        return new RehearsalOutcome(
                sets,
                summary(result),
                perRule(result),
                alarms.stream().limit(MOST_LINES).toList(),
                alarms.size(),
                Words.whole(result.bagDays()));
    }

    private static List<Line> summary(RehearsalResult result) {
        List<Line> lines = new ArrayList<>();
        lines.add(rate("Medium and high", result, Rehearsed::pressing));
        lines.add(rate("High alone", result, set -> set.times(Priority.HIGH)));
        lines.add(rate("Low", result, set -> set.times(Priority.LOW)));
        lines.add(line(
                "Raised in all", "", result, set -> String.valueOf(set.load().raised())));
        lines.add(line("Most on one day", "", result, set -> String.valueOf(set.mostOnADay())));
        lines.add(line(
                "Alarms that chatter",
                "",
                result,
                set -> String.valueOf(set.load().chattering().size())));
        return lines;
    }

    private static List<Line> perRule(RehearsalResult result) {
        Map<RuleId, Rule> rules = new LinkedHashMap<>();
        result.sets().forEach(set -> set.rules().forEach(rule -> rules.putIfAbsent(rule.id(), rule)));
        return rules.values().stream()
                .filter(rule -> result.sets().stream().anyMatch(set -> set.times(rule.id()) > 0))
                .sorted(Comparator.comparing(Rule::priority).reversed())
                .map(rule -> line(
                        rule.name(),
                        AlarmWords.priority(rule.priority()),
                        result,
                        set -> rate(result, set.times(rule.id())) + " (" + set.times(rule.id()) + ")"))
                .toList();
    }

    private static Line rate(String name, RehearsalResult result, ToIntFunction<Rehearsed> alarms) {
        return line(name + ", a day for 100 bags", "", result, set -> rate(result, alarms.applyAsInt(set)));
    }

    private static String rate(RehearsalResult result, int alarms) {
        double rate = result.rate(alarms);
        return Double.isNaN(rate) ? "no bags" : Words.oneDecimal(rate);
    }

    private static Line line(String name, String priority, RehearsalResult result, Function<Rehearsed, String> value) {
        return new Line(name, priority, result.sets().stream().map(value).toList());
    }
}
