package bagward.mould;

import bagward.bag.Bagging;
import bagward.bag.DryingStay;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.climate.Climate;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How pods fared from when the last bag came off: ripening in the house until the harvest, then hanging to dry. Information
 * only. It is looked at in whole hours, each part from its own beginning; what is left of an hour at the end of a part is not counted.
 *
 * @param ripening the time between the last bag and the harvest
 * @param pods mould index of the pods in that time
 * @param stays what hanging to dry did, oldest first; the index goes on from part to part
 * @param betweenHours time from the harvest until it was first hung, h; the index is left as it was
 */
public record LotCourse(Span ripening, IndexStretch pods, List<LotStay> stays, double betweenHours) {
    private static final Duration HOUR = Duration.ofHours(1);

    /** Copies the list. */
    public LotCourse {
        stays = List.copyOf(stays);
    }

    /**
     * The course of a head.
     *
     * @param now nothing after it is looked at
     * @return empty while a bag is on or before the first one, and for a head that was given up
     */
    public static Optional<LotCourse> of(Head head, LotAir air, Surfaces surfaces, Storage storage, Instant now) {
        return bareSince(head, now).map(from -> {
            Instant end = head.ending().map(ending -> ending.at()).orElse(now);
            Span ripening = new Span(from, earlier(end, now));
            TimeGrid hours = hours(ripening);
            Climate house = air.of(head.spot().house(), Optional.of(head.spot().bay()), hours);
            Substrate substrate = surfaces.pods().substrate();
            IndexStretch pods = IndexStretch.over(substrate, house.temperature(), house.humidity(), IndexState.CLEAN);
            List<LotStay> stays = new ArrayList<>();
            IndexState state = pods.end();
            for (DryingStay stay : head.drying().stays()) {
                Instant to = earlier(stay.to().orElse(now), now);
                if (!stay.from().isAfter(to)) {
                    TimeGrid hung = hours(new Span(stay.from(), to));
                    stays.add(LotStay.of(stay, hung, air, substrate, storage, state));
                    state = stays.get(stays.size() - 1).index().end();
                }
            }
            return new LotCourse(ripening, pods, stays, between(end, head, now));
        });
    }

    /** Where the mould index stands at the end. */
    public IndexState state() {
        return stays.isEmpty()
                ? pods.end()
                : stays.get(stays.size() - 1).index().end();
    }

    /** The band of the highest index that was reached: what has grown once is not taken back. */
    public RiskBand band() {
        return GrowthIndex.bandOf(state());
    }

    /** Time at or above the critical humidity in all parts, h. */
    public double growingHours() {
        return pods.growingHours()
                + stays.stream()
                        .mapToDouble(stay -> stay.index().growingHours())
                        .sum();
    }

    /** Time of which nothing is known, between the parts and in them, h. */
    public double unknownHours() {
        return pods.unknownHours()
                + betweenHours
                + stays.stream()
                        .mapToDouble(stay -> stay.index().unknownHours())
                        .sum();
    }

    private static Optional<Instant> bareSince(Head head, Instant now) {
        return head.baggingAt(now).isPresent() || head.stateAt(now) == HeadState.LOST
                ? Optional.empty()
                : head.baggings().stream()
                        .map(Bagging::takenOff)
                        .flatMap(Optional::stream)
                        .filter(off -> !off.isAfter(now))
                        .max(Instant::compareTo);
    }

    private static double between(Instant end, Head head, Instant now) {
        if (head.drying().isEmpty()) {
            return 0;
        }
        Instant hung = head.drying().stays().get(0).from();
        return hung.isAfter(now) ? 0 : Duration.between(end, hung).toMinutes() / 60.0;
    }

    private static TimeGrid hours(Span span) {
        return new TimeGrid(span.from(), HOUR, (int) span.length().toHours());
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
