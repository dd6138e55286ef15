package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.RuleKind;
import bagward.alarm.Step;
import bagward.alarm.Verdict;
import bagward.bag.HangingTimes;
import bagward.climate.TimeGrid;
import bagward.station.House;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The alarms of one drying place over a rehearsal: its climate is computed once, and every instant is looked at, each with
 * as much of the past as a board looks back. Used once, by one thread.
 */
final class DryingSweep {
    private final Rehearsal rehearsal;
    private final House house;

    DryingSweep(Rehearsal rehearsal, House house) {
        this.rehearsal = rehearsal;
        this.house = house;
    }

    List<AlarmEvent> events() {
        if (rehearsal.rules().stream().noneMatch(rule -> rule.kind() == RuleKind.DRYING_DAMP)) {
            return List.of();
        }
        List<AlarmEvent> events = new ArrayList<>();
        AlarmBook book = AlarmBook.EMPTY;
        Place whole = whole();
        HangingTimes hanging =
                HangingTimes.of(rehearsal.at(rehearsal.end(), Knowledge.NONE).register(), house.id());
        for (Instant tick = rehearsal.tickFrom(Instant.MIN);
                !tick.isAfter(rehearsal.end());
                tick = rehearsal.tickFrom(tick.plusMillis(1))) {
            List<Verdict> verdicts = new DryingAssessor(
                            rehearsal.at(tick, Knowledge.NONE), rehearsal.suppressionAt(tick))
                    .verdicts(house, until(whole, tick), hanging);
            Step step = AlarmEngine.step(book, tick, verdicts, rehearsal.rules());
            events.addAll(step.events());
            book = step.book();
        }
        return events;
    }

    private Place whole() {
        BoardInputs in = rehearsal.at(rehearsal.end(), Knowledge.NONE);
        Instant from = DryingAssessor.grid(rehearsal.tickFrom(Instant.MIN)).start();
        TimeGrid all = TimeGrid.covering(from, rehearsal.end().plusMillis(1), DryingAssessor.STEP);
        return new Places(in.station(), in.readings(), all, in.now()).at(house.id(), Optional.empty());
    }

    /** The place as a board of an instant would have seen it. */
    private static Place until(Place whole, Instant tick) {
        TimeGrid seen = DryingAssessor.grid(tick);
        int first = whole.climate().grid().indexOf(seen.start());
        return new Place(whole.climate().part(first, first + seen.size()), whole.sources(), whole.heard());
    }
}
