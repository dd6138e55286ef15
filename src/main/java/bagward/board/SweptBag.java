package bagward.board;

import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.alarm.Verdict;
import bagward.bag.BagBelief;
import bagward.bag.BagClimate;
import bagward.bag.BagFit;
import bagward.bag.BagOutlook;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.Outlook;
import bagward.mould.Ahead;
import bagward.mould.MouldCourse;
import bagward.mould.Reach;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One bag of a rehearsal under what was believed of it for a while: its climate is computed once, and what was known of
 * the night and by the sensor in it is added for each instant. Used by one thread.
 */
final class SweptBag {
    private final Rehearsal rehearsal;
    private final Head head;
    private final Bagging bagging;
    private final BagClimateSource source;
    private final List<Rule> mouldRules;
    private final SeenBag alone;
    private final VerdictTimes times;
    /** As of the instants that were looked at last: a look ahead alternates with one at the instant before. */
    private SeenBag seen;

    private @Nullable Known known;
    private @Nullable Known knownBefore;

    /**
     * Computes the climate of a bag.
     *
     * @param in the season until the end of the while, with what was believed
     */
    SweptBag(Rehearsal rehearsal, Head head, Bagging bagging, BoardInputs in) {
        this.rehearsal = rehearsal;
        this.head = head;
        this.bagging = bagging;
        this.source = new BagClimateSource(
                in,
                head.baggings().get(0).putOn(),
                in.now(),
                rehearsal.knowledge().bagOutlooks());
        this.mouldRules = in.rules().stream()
                .filter(rule -> rule.kind() == RuleKind.BAG_MOULD)
                .toList();
        BagClimate climate = source.climate(head, bagging).bag();
        BagClimate sinceFirst = source.sinceFirst(head, bagging, climate);
        MouldCourse course = MouldCourse.of(sinceFirst, in.organisms());
        Instant due = source.dates(head, bagging).due();
        JudgedBag best = new JudgedBag(
                head, in.crops().of(head).id(), bagging, climate, course, Optional.empty(), due, Optional.empty());
        this.alone = SeenBag.of(best, in.rules(), sinceFirst, in.organisms(), Optional.empty());
        this.seen = alone;
        this.times = VerdictTimes.of(alone, in.rules());
    }

    Bagging bagging() {
        return bagging;
    }

    /** What the rules say at an instant, those that are suppressed by design marked as such. */
    List<Verdict> verdicts(Instant tick) {
        know(tick);
        Suppression suppression = rehearsal.suppressionAt(tick);
        Place place = source.place(head);
        List<Verdict> verdicts = seen.verdicts(rehearsal.rules(), tick, rehearsal.zone()).stream()
                .map(verdict -> suppression.of(verdict, place))
                .toList();
        return new OneCause(rehearsal.rules(), tick).of(verdicts);
    }

    /**
     * The first instant after another at which the verdicts may change.
     *
     * @param mouldStands whether the alarms are in a state that a further outlook may move
     */
    Instant changeAfter(Instant tick, boolean mouldStands) {
        Instant next = Rehearsal.earliest(
                times.after(tick), nearAfter(tick), rehearsal.knowledge().nextFit(head, tick));
        Instant mark = tick;
        while (!mouldRules.isEmpty() && !reached(mark)) {
            mark = rehearsal.knowledge().nextOutlook(mark);
            if (!mark.isBefore(next) || mark.isAfter(rehearsal.end())) {
                return next;
            }
            know(mark);
            if (mouldStands
                    || mouldRules.stream().anyMatch(rule -> expected(rule).isPresent())) {
                return mark;
            }
        }
        return next;
    }

    /** Once the risk is high by every rule that looks at it, no outlook changes anything. */
    private boolean reached(Instant instant) {
        return mouldRules.stream()
                .allMatch(rule -> alone.seenBy(rule)
                        .course()
                        .high()
                        .filter(high -> !high.at().isAfter(instant))
                        .isPresent());
    }

    /** When a rule expects a high risk by the outlook that was looked at last. */
    private Optional<Instant> expected(Rule rule) {
        return seen.seenBy(rule).ahead().flatMap(Ahead::high).map(Reach::at);
    }

    /** When a high risk that is expected comes within the limit of a rule, if that is still to come. */
    private Instant nearAfter(Instant tick) {
        Instant next = Instant.MAX;
        for (Rule general : mouldRules) {
            long seconds = Math.round(3600 * seen.seenBy(general).here(general).limit());
            Instant near = expected(general).map(at -> at.minusSeconds(seconds)).orElse(Instant.MAX);
            next = near.isAfter(tick) ? Rehearsal.earliest(next, near) : next;
        }
        return next;
    }

    private void know(Instant instant) {
        Outlook now = rehearsal.knowledge().outlook(head.spot().house(), instant);
        Optional<BagFit> sits = rehearsal.knowledge().fit(head, bagging, instant);
        Known wanted = known;
        if (wanted == null || !wanted.isOf(now, sits)) {
            wanted = knownBefore;
            if (wanted == null || !wanted.isOf(now, sits)) {
                wanted = new Known(now, sits, alone.knowing(tonight(now), sits));
            }
            knownBefore = known;
            known = wanted;
        }
        seen = wanted.seen();
    }

    private Optional<BagOutlook> tonight(Outlook now) {
        return now instanceof Outlook.Night night
                ? belief().map(belief -> source.tonight(belief, night))
                : Optional.empty();
    }

    private Optional<BagBelief> belief() {
        return source.material(bagging).map(material -> source.belief(material, head, bagging));
    }

    /** The bag with what was known at some instant. */
    private record Known(Outlook night, Optional<BagFit> fit, SeenBag seen) {
        boolean isOf(Outlook otherNight, Optional<BagFit> otherFit) {
            return night.equals(otherNight) && fit.equals(otherFit);
        }
    }
}
