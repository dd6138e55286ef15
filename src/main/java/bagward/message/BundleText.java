package bagward.message;

import bagward.alarm.ActionCard;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.board.PlaceNames;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The words of a message about alarms. */
final class BundleText {
    /** So many lines of one rule are written out; the alarms page has all of them. */
    private static final int MOST_LINES = 40;

    private BundleText() {}

    static String subject(Board board, List<List<News>> parts) {
        if (parts.size() == 1) {
            return head(parts.get(0)) + ": " + what(board, views(parts.get(0)));
        }
        int alarms = parts.stream().mapToInt(List::size).sum();
        return alarms + " alarms of " + parts.size() + " kinds: "
                + parts.stream().map(part -> rule(part).name()).distinct().collect(Collectors.joining(", "));
    }

    static String text(Board board, List<List<News>> parts) {
        return parts.stream().map(part -> part(board, part)).collect(Collectors.joining("\n\n"));
    }

    private static String part(Board board, List<News> part) {
        List<AlarmView> views = views(part);
        return head(part) + ": " + what(board, views) + ".\n" + lines(board, views)
                + (part.get(0).told().news() == Told.News.RETURNED
                        ? "\nIt is over by now. Look all the same when you come by.\n" + caution(rule(part))
                        : "\n" + card(rule(part)));
    }

    /** What there is to tell: "Act now: Bag does not dry". */
    private static String head(List<News> part) {
        String name = rule(part).name();
        return switch (part.get(0).told().news()) {
            case RAISED -> soon(rule(part).priority()) + ": " + name;
            case REMINDED -> "Still not seen by anybody: " + name;
            case SECOND_TURN -> "Nobody has seen it so far: " + name;
            case RETURNED -> "Over: " + name;
        };
    }

    private static String soon(Priority priority) {
        return switch (priority) {
            case HIGH -> "Act now";
            case MEDIUM -> "Today";
            case LOW -> "When you come by";
        };
    }

    /** "10 bags in Alder house, Long bench". */
    static String what(Board board, List<AlarmView> views) {
        boolean bags = views.stream().allMatch(view -> view.alarm().key().subject() instanceof Subject.Bag);
        String one = PlaceNames.subject(board, views.get(0));
        String count = views.size() == 1 ? one : views.size() + (bags ? " bags" : " alarms");
        Set<String> places = views.stream()
                .map(view -> PlaceNames.ofAlarm(board, view))
                .filter(place -> !place.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        return places.isEmpty()
                ? count
                : count + (places.size() == 1 ? " in " + places.iterator().next() : " in " + places.size() + " places");
    }

    /** One line an alarm under the name of its place, as the board orders them. */
    static String lines(Board board, List<AlarmView> views) {
        StringBuilder lines = new StringBuilder();
        String before = "";
        for (AlarmView view : views.subList(0, Math.min(MOST_LINES, views.size()))) {
            String place = PlaceNames.ofAlarm(board, view);
            if (!place.equals(before)) {
                lines.append(place).append(":\n");
                before = place;
            }
            String over = view.alarm().phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED ? ", over by now" : "";
            lines.append("- ").append(PlaceNames.subject(board, view)).append(": ");
            lines.append(view.alarm().message()).append(over).append('\n');
            lines.append(bags(view));
        }
        int more = views.size() - MOST_LINES;
        return more > 0 ? lines + "and " + more + " more, on the page Alarms.\n" : lines.toString();
    }

    /** The bags that a house calls for. */
    private static String bags(AlarmView view) {
        if (view.bags().isEmpty()) {
            return "";
        }
        int more = view.bags().size() - MOST_LINES;
        return "  "
                + view.bags().stream().limit(MOST_LINES).map(TagCode::value).collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more" : "") + "\n";
    }

    private static String card(Rule rule) {
        ActionCard card = rule.card();
        return "Do: " + card.what() + "\n" + caution(rule) + "How soon: " + card.howSoon() + "\nWhy: " + card.why()
                + "\nYou know it worked when: " + card.proof() + "\n";
    }

    static String caution(Rule rule) {
        return rule.card().caution().isBlank() ? "" : "Caution: " + rule.card().caution() + "\n";
    }

    private static Rule rule(List<News> part) {
        return part.get(0).alarm().rule();
    }

    private static List<AlarmView> views(List<News> part) {
        return part.stream().map(News::alarm).toList();
    }
}
