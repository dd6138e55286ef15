package bagward.app;

import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.board.Rehearsed;
import bagward.watch.rehearsal.RehearsalResult;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;

/** The outcome of a rehearsal as a table of text. */
final class RehearsalTable {
    private final PrintWriter out;
    private final RehearsalResult result;

    RehearsalTable(PrintWriter out, RehearsalResult result) {
        this.out = out;
        this.result = result;
    }

    void print(ZoneId zone) {
        out.printf(
                Locale.ROOT,
                "From %s to %s, a look every %d min, %.0f bag-days.%n%n",
                result.days().from().atZone(zone).toLocalDateTime(),
                result.days().to().atZone(zone).toLocalDateTime(),
                result.days().every().toMinutes(),
                result.bagDays());
        row("alarms of", result.sets().size() == 1 ? List.of("this file") : List.of("this file", "the other"));
        Set<RuleId> ids = new LinkedHashSet<>();
        result.sets().forEach(set -> set.rules().stream().map(Rule::id).forEach(ids::add));
        ids.forEach(id -> row(id.value(), set -> String.valueOf(set.times(id))));
        row("all", set -> String.valueOf(set.load().raised()));
        row("a day", set -> number(set.load().raised() / result.days().days()));
        row("most on one day", set -> String.valueOf(set.mostOnADay()));
        row("medium and high, a day for 100 bags", set -> rate(set.pressing()));
        row("all, a day for 100 bags", set -> rate(set.load().raised()));
        row("that chatter", set -> String.valueOf(set.load().chattering().size()));
        out.printf("%nNot rehearsed: trouble of the system, clocks, and what people do.%n");
    }

    private String rate(int alarms) {
        double rate = result.rate(alarms);
        return Double.isNaN(rate) ? "no bags" : number(rate);
    }

    private void row(String name, Function<Rehearsed, String> value) {
        row(name, result.sets().stream().map(value).toList());
    }

    private void row(String name, List<String> values) {
        out.printf("%-38s", name);
        values.forEach(value -> out.printf("%12s", value));
        out.println();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
