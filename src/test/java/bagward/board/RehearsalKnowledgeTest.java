package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Step;
import bagward.bag.Outlook;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.station.House;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Ten days of a small station with wet nights, the last but one of which stays dry, and a sensor lent to a bag that falls
 * shut: what is known of nights and bags is that of each instant.
 */
class RehearsalKnowledgeTest {
    private static final Duration HOUR = Duration.ofHours(1);
    private static final double END = 240;
    private static final Comparator<AlarmEvent> ORDER =
            Comparator.comparing(AlarmEvent::at).thenComparing(AlarmEvent::key).thenComparing(AlarmEvent::to);

    private final Map<String, Outlook> outlooks = new HashMap<>();
    private final Scenario scenario =
            new Scenario(20).watch(Scenario.DAMP, Scenario.MOULD, Scenario.SHUT, Scenario.OFF, Scenario.SILENT);

    RehearsalKnowledgeTest() {
        for (int day = 0; day < 10; day++) {
            double midnight = 24.0 * day;
            scenario.heard(Scenario.SOUTH_POST, midnight, midnight + 7, 12, day == 8 ? 60 : 93)
                    .heard(Scenario.SOUTH_POST, midnight + 7, midnight + 21, 19, 62)
                    .heard(Scenario.SOUTH_POST, midnight + 21, midnight + 24, 13, day == 7 ? 60 : 92);
        }
        scenario.heard(Scenario.NORTH_POST, 0, END, 14, 70)
                .heard(Scenario.SPARE, 50, 130, 14, 82)
                .heard(Scenario.SPARE, 130, 190, 14, 99)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 10)
                .bag("N-2", Scenario.NORTH, Scenario.AISLE, 2, 10)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 12 + 24 * 6)
                .bag("S-2", Scenario.SOUTH, Scenario.WINDOW, 2, 12 + 24 * 7)
                .change(new RegisterChange.Lend(new TagCode("N-1"), Scenario.hours(50), Scenario.SPARE.id()))
                .change(new RegisterChange.GiveBack(new TagCode("N-1"), Scenario.hours(190), Scenario.SPARE.id()));
    }

    @Test
    void it_gives_the_alarms_of_the_running_engine_with_what_was_known_at_each_instant() {
        List<AlarmEvent> expected = live();
        assertTrue(raised(expected, "mould", "high risk expected") > 1, () -> String.join("\n", words(expected)));
        assertTrue(raised(expected, "shut", "Closure") > 0, () -> String.join("\n", words(expected)));
        assertEquals(words(expected), words(rehearsed(scenario.at(END), HOUR)));
    }

    @Test
    void readings_after_an_instant_change_nothing_that_was_raised_before_it() {
        List<String> whole = words(rehearsed(scenario.at(END), Duration.ofDays(1)));
        Instant noon = Scenario.hours(204);
        List<String> cut = words(rehearsed(scenario.at(204), Duration.ofDays(1)));
        List<String> before = whole.stream()
                .filter(word -> cut.contains(word) || word.compareTo("AlarmEvent[at=" + noon) < 0)
                .toList();
        assertTrue(cut.size() > 4, "events to compare: " + cut.size());
        assertEquals(cut, before);
    }

    private static long raised(List<AlarmEvent> events, String rule, String says) {
        return events.stream()
                .filter(event -> event.to() == AlarmPhase.UNACKNOWLEDGED)
                .filter(event -> event.key().rule().value().equals(rule))
                .filter(event -> event.message().startsWith(says))
                .count();
    }

    private static List<AlarmEvent> rehearsed(BoardInputs season, Duration lessonsEvery) {
        Rehearsal rehearsal = new Rehearsal(season, Scenario.START, HOUR, lessonsEvery);
        List<AlarmEvent> events = new ArrayList<>(rehearsal.sensorEvents());
        rehearsal.heads().forEach(head -> events.addAll(rehearsal.events(head)));
        return events;
    }

    private List<AlarmEvent> live() {
        BoardInputs all = scenario.at(END);
        List<AlarmEvent> events = new ArrayList<>();
        AlarmBook book = AlarmBook.EMPTY;
        for (Instant now = Scenario.START; !now.isAfter(all.now()); now = now.plus(HOUR)) {
            BoardInputs in = knowing(all, now);
            Step step =
                    AlarmEngine.step(book, now, BoardBuilder.assess(in, book).verdicts(), in.rules());
            events.addAll(step.events());
            book = step.book();
        }
        return events;
    }

    /** A board's inputs with what the running station would have known; all of it worked out anew. */
    private BoardInputs knowing(BoardInputs all, Instant now) {
        List<LoanStudy> studies = Lessons.lent(all.register(), now).stream()
                .flatMap(
                        lent -> LoanStudy.of(
                                all.station(), lent, all.register().loans(), Scenario.material(), all.readings(), now)
                                .stream())
                .toList();
        Map<HouseId, Outlook> kept = new HashMap<>();
        for (House house : all.station().houses()) {
            kept.put(house.id(), kept(all, house.id(), now));
        }
        return new BoardInputs(
                now,
                all.station(),
                all.register(),
                all.materials(),
                all.readings(),
                all.rules(),
                all.organisms(),
                all.crops(),
                Lessons.known(studies, all.materials(), kept, Map.of(), now),
                all.system());
    }

    /** The outlook that was made ten minutes past the hour; where that gave none, one made now. */
    private Outlook kept(BoardInputs all, HouseId house, Instant now) {
        Instant made =
                now.minus(Duration.ofMinutes(10)).truncatedTo(ChronoUnit.HOURS).plus(Duration.ofMinutes(10));
        Outlook kept = made(all, house, made);
        return kept instanceof Outlook.Night ? kept : made(all, house, now);
    }

    private Outlook made(BoardInputs all, HouseId house, Instant at) {
        return outlooks.computeIfAbsent(
                house + " at " + at, key -> Lessons.outlook(all.station(), house, all.readings(), at));
    }

    private static List<String> words(List<AlarmEvent> events) {
        return events.stream().sorted(ORDER).map(Object::toString).toList();
    }
}
