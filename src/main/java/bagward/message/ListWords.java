package bagward.message;

import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.board.AlarmView;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.PlaceNames;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Sections that the lists of the day share. */
final class ListWords {
    /** Whoever opens a bag reads this first. */
    static final String BAG_CAUTION = "Caution: Brassica pollen is an allergen; open bags below face height. A bag with"
            + " visible mould is moistened or closed before it is cut off, not by people with asthma or weak immune"
            + " defence. Local rules come first.\n";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final int MOST_LINES = 40;

    private ListWords() {}

    /** The civil day of the station. */
    static LocalDate date(Board board, Instant at) {
        return at.atZone(board.zone()).toLocalDate();
    }

    /** Its name. */
    static String day(Board board) {
        return DAY.format(date(board, board.at()));
    }

    /** A section of bags in walking order; empty if there are none. */
    static String bags(Board board, String title, List<BagView> bags, Function<BagView, String> words) {
        if (bags.isEmpty()) {
            return "";
        }
        StringBuilder section =
                new StringBuilder(title).append(" (").append(bags.size()).append("):\n");
        bags.stream()
                .limit(MOST_LINES)
                .forEach(bag -> section.append("- ")
                        .append(PlaceNames.head(board, bag.head()))
                        .append(", ")
                        .append(bag.head().tag())
                        .append(": ")
                        .append(words.apply(bag))
                        .append('\n'));
        int more = bags.size() - MOST_LINES;
        return section.append(more > 0 ? "and " + more + " more.\n" : "")
                .append('\n')
                .toString();
    }

    /** Alarms that nobody has seen, rule by rule with what to do; those about due days have a section of their own. */
    static String unseen(Board board) {
        Map<Rule, List<AlarmView>> byRule = new LinkedHashMap<>();
        for (AlarmView view : board.alarms()) {
            if (view.rule().kind() != RuleKind.BAG_DUE && view.alarm().phase() != AlarmPhase.ACKNOWLEDGED) {
                byRule.computeIfAbsent(view.rule(), rule -> new ArrayList<>()).add(view);
            }
        }
        StringBuilder section = new StringBuilder();
        byRule.forEach((rule, views) -> section.append(rule.name())
                .append(", not seen by anybody: ")
                .append(BundleText.what(board, views))
                .append(".\n")
                .append(BundleText.lines(board, views))
                .append("Do: ")
                .append(rule.card().what())
                .append('\n')
                .append(BundleText.caution(rule))
                .append('\n'));
        return section.toString();
    }
}
