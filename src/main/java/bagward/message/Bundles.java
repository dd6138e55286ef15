package bagward.message;

import bagward.alarm.Priority;
import bagward.alarm.RuleId;
import bagward.board.Board;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Puts news together: one message a rule and kind of news, and if that were more than a few, one for all. */
final class Bundles {
    /** More messages than this at one time become one. Ours. */
    private static final int FEW = 3;

    private Bundles() {}

    /** The messages of what is to be told to a person now. */
    static List<Message> of(Board board, Person person, List<News> news) {
        Map<Kind, List<News>> bundles = new LinkedHashMap<>();
        for (News one : news) {
            Kind kind = new Kind(one.alarm().rule().id(), one.told().news());
            bundles.computeIfAbsent(kind, k -> new ArrayList<>()).add(one);
        }
        List<List<News>> parts = new ArrayList<>(bundles.values());
        parts.sort(Comparator.comparing((List<News> part) -> priority(part)).reversed());
        if (parts.size() > FEW) {
            return List.of(message(board, person, parts));
        }
        return parts.stream().map(part -> message(board, person, List.of(part))).toList();
    }

    private static Message message(Board board, Person person, List<List<News>> parts) {
        List<Told> tells = parts.stream().flatMap(List::stream).map(News::told).toList();
        return new Message(
                MessageId.of("alarms", person, tells),
                board.at(),
                person.name(),
                parts.stream()
                        .map(Bundles::priority)
                        .max(Comparator.naturalOrder())
                        .orElse(Priority.LOW),
                BundleText.subject(board, parts),
                BundleText.text(board, parts),
                tells,
                new TreeSet<>(person.channels()));
    }

    private static Priority priority(List<News> part) {
        return part.get(0).alarm().rule().priority();
    }

    private record Kind(RuleId rule, Told.News news) {}
}
