package bagward.bag;

import bagward.climate.Span;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When at least one seed lot hung in a drying place.
 *
 * @param spans oldest first; stays that touch or overlap are one, and one that lasts ends at {@link Instant#MAX}
 */
public record HangingTimes(List<Span> spans) {
    /** Copies the list. */
    public HangingTimes {
        spans = List.copyOf(spans);
    }

    /** The times of a place. */
    public static HangingTimes of(Register register, HouseId house) {
        List<Span> stays = register.heads().stream()
                .flatMap(head -> head.drying().stays().stream())
                .filter(stay -> stay.house().filter(house::equals).isPresent())
                .map(stay -> new Span(stay.from(), stay.to().orElse(Instant.MAX)))
                .sorted(Comparator.comparing(Span::from))
                .toList();
        List<Span> joined = new ArrayList<>();
        for (Span stay : stays) {
            int last = joined.size() - 1;
            if (last >= 0 && !stay.from().isAfter(joined.get(last).to())) {
                joined.set(last, join(joined.get(last), stay));
            } else {
                joined.add(stay);
            }
        }
        return new HangingTimes(joined);
    }

    private static Span join(Span one, Span later) {
        return new Span(one.from(), later.to().isAfter(one.to()) ? later.to() : one.to());
    }

    /** Since when a lot hangs there without a break; empty if none does. */
    public Optional<Instant> since(Instant now) {
        return spans.stream().filter(span -> span.holds(now)).map(Span::from).findFirst();
    }

    /** When the last one was taken away before an instant; empty if none was. */
    public Optional<Instant> lastEnd(Instant now) {
        return ends().filter(end -> !end.isAfter(now)).reduce((earlier, later) -> later);
    }

    private Stream<Instant> ends() {
        return spans.stream().map(Span::to);
    }
}
