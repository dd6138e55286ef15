package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The events of the running engine and those of a rehearsal, in a form that can be compared. */
final class SideBySide {
    private static final Comparator<AlarmEvent> ORDER =
            Comparator.comparing(AlarmEvent::at).thenComparing(AlarmEvent::key).thenComparing(AlarmEvent::to);

    private SideBySide() {}

    /** What a rehearsal gives from the start of the scenario. */
    static List<AlarmEvent> rehearsed(BoardInputs season, Duration every) {
        Rehearsal rehearsal = new Rehearsal(season, Scenario.START, every);
        List<AlarmEvent> events = new ArrayList<>(rehearsal.sensorEvents());
        rehearsal.heads().forEach(head -> events.addAll(rehearsal.events(head)));
        events.addAll(rehearsal.houseEvents());
        return events;
    }

    /** What the running engine gives, board by board. */
    static List<AlarmEvent> live(Scenario scenario, double endHour, Duration every) {
        List<AlarmEvent> events = new ArrayList<>();
        AlarmBook book = AlarmBook.EMPTY;
        BoardInputs all = scenario.at(endHour);
        for (Instant now = Scenario.START; !now.isAfter(all.now()); now = now.plus(every)) {
            BoardInputs in = all.until(now);
            Step step =
                    AlarmEngine.step(book, now, BoardBuilder.assess(in, book).verdicts(), in.rules());
            events.addAll(step.events());
            book = step.book();
        }
        return events;
    }

    /** Every event with all its words, in one order. */
    static List<String> words(List<AlarmEvent> events) {
        return events.stream().sorted(ORDER).map(Object::toString).toList();
    }
}
