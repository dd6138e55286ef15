package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Step;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.mould.MouldCourse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The alarms of one head over a rehearsal. Used once, by one thread. */
final class HeadSweep {
    /** A climate is computed for so long at a time: a bag that was forgotten costs no more than several others. */
    private static final Duration STRETCH = Duration.ofDays(7);

    private final Rehearsal rehearsal;
    private final Head head;
    private final List<AlarmEvent> events = new ArrayList<>();
    private AlarmBook book = AlarmBook.EMPTY;
    private @Nullable SeenBag seen;
    private @Nullable Bagging seenBagging;
    private @Nullable Place place;
    private Instant knownUntil = Instant.MIN;

    HeadSweep(Rehearsal rehearsal, Head head) {
        this.rehearsal = rehearsal;
        this.head = head;
    }

    List<AlarmEvent> events() {
        if (head.baggings().isEmpty()) {
            return List.of();
        }
        Instant first = head.baggings().get(0).putOn();
        Instant last =
                head.baggings().get(head.baggings().size() - 1).takenOff().orElse(rehearsal.end());
        Instant tick = rehearsal.tickFrom(first);
        while (!tick.isAfter(rehearsal.end())
                && (tick.isBefore(last) || !book.alarms().isEmpty())) {
            Step step = AlarmEngine.step(
                    book, tick, verdicts(tick), rehearsal.at(tick).rules());
            events.addAll(step.events());
            book = step.book();
            tick = rehearsal.after(tick);
        }
        return events;
    }

    private List<Verdict> verdicts(Instant tick) {
        Optional<Bagging> on = head.baggingAt(tick);
        if (on.isEmpty()) {
            return List.of();
        }
        SeenBag bag = seen(on.get(), tick);
        Suppression suppression = rehearsal.suppressionAt(tick);
        BoardInputs in = rehearsal.at(tick);
        return bag.verdicts(in.rules(), tick, in.station().zone()).stream()
                .map(verdict -> place == null ? verdict : suppression.of(verdict, place))
                .toList();
    }

    private SeenBag seen(Bagging bagging, Instant tick) {
        SeenBag known = seen;
        if (known == null || !bagging.equals(seenBagging) || tick.isAfter(knownUntil)) {
            knownUntil = earliest(tick.plus(STRETCH), bagging.takenOff().orElse(rehearsal.end()), rehearsal.end());
            known = see(bagging, knownUntil);
            seen = known;
            seenBagging = bagging;
        }
        return known;
    }

    private SeenBag see(Bagging bagging, Instant until) {
        BoardInputs in = rehearsal.at(until);
        BagClimateSource source =
                new BagClimateSource(in, head.baggings().get(0).putOn(), until);
        place = source.place(head);
        BagClimate climate = source.climate(head, bagging).bag();
        BagClimate sinceFirst = source.sinceFirst(head, bagging, climate);
        MouldCourse course = MouldCourse.of(sinceFirst, in.organisms());
        Instant due = source.dates(head, bagging).due();
        JudgedBag best = new JudgedBag(
                head, in.crops().of(head).id(), bagging, climate, course, Optional.empty(), due, Optional.empty());
        return SeenBag.of(best, in.rules(), sinceFirst, in.organisms(), Optional.empty());
    }

    private static Instant earliest(Instant... instants) {
        Instant earliest = Instant.MAX;
        for (Instant instant : instants) {
            earliest = instant.isBefore(earliest) ? instant : earliest;
        }
        return earliest;
    }
}
