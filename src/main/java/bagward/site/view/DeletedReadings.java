package bagward.site.view;

import bagward.bag.Bagging;
import bagward.bag.Head;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;

/** Says of an old head that readings of its time in the bag are gone, so that a gap is not taken for a broken sensor. */
public final class DeletedReadings {
    private DeletedReadings() {}

    /**
     * The line about a head; empty if every reading of its time in the bag is kept.
     *
     * @param keptSince readings before this may be gone
     */
    public static Optional<Fact> of(Head head, Instant keptSince, ZoneId zone) {
        return head.baggings().stream()
                .map(Bagging::putOn)
                .filter(putOn -> putOn.isBefore(keptSince))
                .findFirst()
                .map(putOn -> new Fact(
                        "Single readings",
                        "those before " + Words.dayAndClock(keptSince, zone)
                                + " were deleted as configured; of them only daily and ten-minute summaries are left"));
    }
}
