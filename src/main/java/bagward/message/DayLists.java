package bagward.message;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.pollen.PollenReport;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The list of the day in the morning and of the night in the evening: each once a civil day. */
final class DayLists {
    /** So late after its time the morning list is still worth reading; the program may have been off. Ours. */
    private static final Duration MORNING_WINDOW = Duration.ofHours(4);

    /** The same for the evening list. Ours. */
    private static final Duration EVENING_WINDOW = Duration.ofHours(2);

    private final Board board;
    private final Map<HouseId, PollenReport> pollen;
    private final MessagePlan plan;

    /** @param pollen the newest report of each house */
    DayLists(Board board, Map<HouseId, PollenReport> pollen, MessagePlan plan) {
        this.board = board;
        this.pollen = pollen;
        this.plan = plan;
    }

    /** The list that is due to a person now, if any. */
    List<Message> due(Person person, Sent sent) {
        if (!person.lists()) {
            return List.of();
        }
        List<Message> due = new ArrayList<>();
        if (within(plan.morning(), MORNING_WINDOW)) {
            list("today", person, sent, TodayList.text(board, pollen)).ifPresent(due::add);
        }
        if (within(plan.evening(), EVENING_WINDOW)) {
            list("tonight", person, sent, TonightList.text(board)).ifPresent(due::add);
        }
        return due;
    }

    private boolean within(LocalTime time, Duration window) {
        ZonedDateTime now = board.at().atZone(board.zone());
        Instant from = now.toLocalDate().atTime(time).atZone(board.zone()).toInstant();
        return !board.at().isBefore(from) && board.at().isBefore(from.plus(window));
    }

    /** An empty text is no list. */
    private Optional<Message> list(String kind, Person person, Sent sent, String text) {
        String day = board.at().atZone(board.zone()).toLocalDate().toString();
        String id = MessageId.once(kind + "-" + day, person);
        if (text.isEmpty() || sent.has(id)) {
            return Optional.empty();
        }
        List<Told> tells = unseen(new Memory(sent, person));
        return Optional.of(new Message(
                id,
                board.at(),
                person.name(),
                Priority.LOW,
                (kind.equals("today") ? "Today" : "Tonight") + " at " + board.station() + ", " + ListWords.day(board),
                text,
                tells,
                new TreeSet<>(person.channels())));
    }

    /** Every listed alarm that nobody has seen, in the state in which the list tells it. */
    private List<Told> unseen(Memory memory) {
        List<Told> tells = new ArrayList<>();
        for (AlarmView view : board.alarms()) {
            Alarm alarm = view.alarm();
            if (alarm.phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED) {
                tells.add(memory.state(alarm, Told.News.RETURNED, 1));
            } else if (alarm.phase() == AlarmPhase.UNACKNOWLEDGED) {
                tells.add(
                        memory.first(alarm).isEmpty()
                                ? memory.state(alarm, Told.News.RAISED, 1)
                                : memory.state(alarm, Told.News.REMINDED, memory.reminders(alarm) + 1));
            }
        }
        return tells;
    }
}
