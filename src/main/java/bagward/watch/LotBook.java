package bagward.watch;

import bagward.bag.BagUses;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.mould.LotAir;
import bagward.mould.LotCourse;
import bagward.mould.Storage;
import bagward.mould.Surfaces;
import bagward.mould.UsedBag;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What pods, seed lots and used bags went through, worked out when a page asks: each answer reads weeks of readings, so no
 * board waits for it, and it stands for five minutes unless the register changes. Safe for use by several threads.
 */
public final class LotBook {
    private static final Duration FRESH = Duration.ofMinutes(5);

    private final KeptAnswers<Optional<LotCourse>> courses = new KeptAnswers<>(FRESH);
    private final KeptAnswers<UsedBag> usedBags = new KeptAnswers<>(FRESH);
    private final Watch watch;
    private final LotAir air;
    private final Surfaces surfaces;
    private final Storage storage;
    private final Clock clock;

    /**
     * A book on a running watch.
     *
     * @param air climate of the places of the station
     * @param surfaces what mould grows on
     * @param storage what is known of keeping seed
     */
    public LotBook(Watch watch, LotAir air, Surfaces surfaces, Storage storage, Clock clock) {
        this.watch = watch;
        this.air = air;
        this.surfaces = surfaces;
        this.storage = storage;
        this.clock = clock;
    }

    /** How the pods of a head and its seed lot fared; empty while a bag is on. */
    public Optional<LotCourse> course(Head head) {
        Instant now = clock.instant();
        return courses.answer(head, now, () -> LotCourse.of(head, air, surfaces, storage, now));
    }

    /** The newest bag of a head over all its uses; empty if it was new. */
    public Optional<UsedBag> usedBag(Head head) {
        Bagging newest = head.baggings().get(head.baggings().size() - 1);
        List<BagUses.Use> earlier = BagUses.before(watch.register(), newest);
        if (earlier.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(usedBags.answer(List.of(head, earlier), clock.instant(), () -> over(earlier, head, newest)));
    }

    private UsedBag over(List<BagUses.Use> earlier, Head head, Bagging newest) {
        List<UsedBag.Stretch> stretches = new ArrayList<>();
        earlier.forEach(use -> stretches.add(stretch(use.head(), use.bagging())));
        stretches.add(stretch(head, newest));
        return UsedBag.of(surfaces.of(newest.material()), stretches);
    }

    private UsedBag.Stretch stretch(Head head, Bagging bagging) {
        Instant until = bagging.takenOff().orElse(clock.instant());
        return new UsedBag.Stretch(head.tag(), bagging.putOn(), until, watch.inBag(head, bagging));
    }
}
