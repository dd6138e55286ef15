package bagward.site.view;

import bagward.alarm.AlarmPhase;
import bagward.alarm.Subject;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The few things to do now: first what cannot wait, then the rest, last what is over and only unseen, each in
 * walking order. One line a bag, sensor or
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
        Map<Spot, Integer> walk = new HashMap<>();
        Map<HouseId, Integer> doors = new HashMap<>();
        board.bags().forEach(bag -> {
            doors.putIfAbsent(bag.head().spot().house(), walk.size());
            walk.putIfAbsent(bag.head().spot(), walk.size());
        });
        List<AlarmView> sorted = new ArrayList<>(board.alarms());
        sorted.sort(Comparator.comparingInt(Round::turn)
                .thenComparingInt(alarm -> step(walk, doors, alarm))
                .thenComparing(alarm -> alarm.spot().isPresent()));
        return sorted;
    }

    /** What cannot wait goes first, what is over by now last. */
    private static int turn(AlarmView alarm) {
        if (alarm.alarm().phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED) {
            return 2;
        }
        return Standing.of(alarm) == Standing.ACT ? 0 : 1;
    }

    /** A house comes at its first bag, what has no place last. */
    private static int step(Map<Spot, Integer> walk, Map<HouseId, Integer> doors, AlarmView alarm) {
        if (alarm.alarm().key().subject() instanceof Subject.InHouse in) {
            return doors.getOrDefault(in.house(), Integer.MAX_VALUE);
        }
        return alarm.spot().map(walk::get).orElse(Integer.MAX_VALUE);
    }
}
