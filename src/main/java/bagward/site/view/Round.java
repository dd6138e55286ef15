package bagward.site.view;

import bagward.board.AlarmView;
import bagward.board.Board;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The few things to do now: first what cannot wait, then the rest, each in walking order. One line a bag, sensor or
 * house, even if several rules call.
 *
 * @param shown the lines
 * @param more how many lines did not fit
 */
public record Round(List<ToDo> shown, int more) {
    /** Copies the list. */
    public Round {
        shown = List.copyOf(shown);
    }

    /** The round of a board with at most so many lines. */
    public static Round of(Board board, int most) {
        List<ToDo> lines = new ArrayList<>();
        Set<String> subjects = new LinkedHashSet<>();
        for (AlarmView alarm : urgentFirst(board)) {
            if (subjects.add(alarm.alarm().key().subject().key())) {
                lines.add(ToDo.of(board, alarm));
            }
        }
        int fits = Math.min(most, lines.size());
        return new Round(lines.subList(0, fits), lines.size() - fits);
    }

    private static List<AlarmView> urgentFirst(Board board) {
        List<String> walk =
                board.bags().stream().map(b -> b.head().spot().toString()).toList();
        List<AlarmView> sorted = new ArrayList<>(board.alarms());
        sorted.sort((a, b) -> {
            boolean now = Standing.of(a) == Standing.ACT;
            boolean otherNow = Standing.of(b) == Standing.ACT;
            if (now != otherNow) {
                return now ? -1 : 1;
            }
            return Integer.compare(step(walk, a), step(walk, b));
        });
        return sorted;
    }

    private static int step(List<String> walk, AlarmView alarm) {
        int step = alarm.spot().map(s -> walk.indexOf(s.toString())).orElse(-1);
        return step < 0 ? Integer.MAX_VALUE : step;
    }
}
