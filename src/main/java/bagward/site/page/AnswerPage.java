package bagward.site.page;

import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.message.Message;
import bagward.message.Told;
import bagward.site.view.AlarmWords;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The alarms of one message, to be confirmed by the person it was sent to.
 *
 * @param person name of the person
 * @param subject subject of the message
 * @param lines its alarms
 * @param address address of this page
 */
public record AnswerPage(String person, String subject, List<Line> lines, String address) {
    /**
     * One alarm.
     *
     * @param told what the message told
     * @param what rule and subject
     * @param link page of the alarm
     * @param state how it stands now
     * @param open whether it waits for somebody to confirm it
     */
    public record Line(Told told, String what, String link, String state, boolean open) {}

    /** The page of a message. */
    public static AnswerPage of(Board board, List<Rule> rules, Message message, String address) {
        Set<Object> alarms = new HashSet<>();
        List<Line> lines = message.tells().stream()
                .filter(told -> alarms.add(List.of(told.alarm(), told.raisedAt())))
                .map(told -> line(board, rules, told))
                .toList();
        return new AnswerPage(message.person(), message.subject(), lines, address);
    }

    /** Whether there is anything to confirm. */
    public boolean open() {
        return lines.stream().anyMatch(Line::open);
    }

    private static Line line(Board board, List<Rule> rules, Told told) {
        Optional<AlarmView> now = board.alarms().stream()
                .filter(view -> view.alarm().key().equals(told.alarm()))
                .filter(view -> view.alarm().raisedAt().equals(Optional.of(told.raisedAt())))
                .findFirst();
        String what = AlarmWords.rule(rules, told.alarm().rule()) + ", "
                + AlarmWords.subject(board, told.alarm().subject());
        boolean open = now.filter(view -> waits(view.alarm().phase())).isPresent();
        return new Line(told, what, AlarmWords.address(told.alarm()), state(now, open), open);
    }

    private static boolean waits(AlarmPhase phase) {
        return phase == AlarmPhase.UNACKNOWLEDGED || phase == AlarmPhase.RETURNED_UNACKNOWLEDGED;
    }

    private static String state(Optional<AlarmView> now, boolean open) {
        if (now.isEmpty()) {
            return "not listed any more: over, put aside, or raised anew since this message";
        }
        String by = now.get()
                .alarm()
                .acknowledgedBy()
                .map(name -> "seen by " + name)
                .orElse("seen");
        return open ? "nobody has confirmed it yet: " + now.get().alarm().message() : by;
    }
}
