package bagward.board;

import bagward.bag.BagFit;
import bagward.bag.BagFitCheck;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.MaterialLearning;
import bagward.bag.Outlook;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was known at each instant of a season, from the readings until then: what lent sensors had taught, how the bags sat
 * in which one hung, and what was expected of the night. What was worked out once is kept. Safe for use by several threads.
 *
 * <p>The running station learns every ten minutes. A rehearsal takes what was taught anew at longer intervals, since each
 * lesson changes the estimates of all bags of a material from their beginning on, and how a bag sits once an hour, since
 * whole hours are judged.
 */
final class PastKnowledge {
    /** How often there is something new to know, as for the running station. */
    private static final Duration MARK = Duration.ofMinutes(10);

    private static final Duration FIT_EVERY = Duration.ofHours(1);

    private final BoardInputs season;
    private final Duration lessonsEvery;
    private final Duration fitEvery;
    private final boolean anyLoan;
    private final PastOutlooks outlooks;
    private final BagOutlooks bagOutlooks = new BagOutlooks();
    private final Map<Instant, List<Taught>> taught = new HashMap<>();
    private final Map<Lessons.Lent, Optional<LoanStudy>> ended = new HashMap<>();

    /**
     * @param from nothing is asked for before it
     * @param lessonsEvery how often what lent sensors taught is taken anew; ten minutes or more
     */
    PastKnowledge(BoardInputs season, Instant from, Duration lessonsEvery) {
        this.season = season;
        this.lessonsEvery = lessonsEvery;
        this.fitEvery = lessonsEvery.compareTo(FIT_EVERY) < 0 ? lessonsEvery : FIT_EVERY;
        this.anyLoan = !season.register().loans().isEmpty();
        this.outlooks = new PastOutlooks(season, from);
    }

    /** What lent sensors had taught, with nothing of the night. */
    synchronized Knowledge lessonsAt(Instant now) {
        if (!anyLoan) {
            return Knowledge.NONE;
        }
        return new Knowledge(taught.computeIfAbsent(floor(now, lessonsEvery), this::taughtAt), Map.of(), Map.of());
    }

    /** The instant at which they are taken anew next; {@link Instant#MAX} if nobody ever lent a sensor. */
    Instant nextLessons(Instant now) {
        return anyLoan ? floor(now, lessonsEvery).plus(lessonsEvery) : Instant.MAX;
    }

    /** What was expected of a house until the next morning. */
    Outlook outlook(HouseId house, Instant now) {
        return outlooks.at(house, floor(now, MARK));
    }

    /** The instant from which another outlook of a house may hold. */
    Instant nextOutlook(Instant now) {
        return outlooks.next(floor(now, MARK));
    }

    /** The same for bags, as far as was asked for. */
    BagOutlooks bagOutlooks() {
        return bagOutlooks;
    }

    /** How a bag sat by the sensor in it; empty if none hung there. */
    synchronized Optional<BagFit> fit(Head head, Bagging bagging, Instant now) {
        Instant mark = floor(now, fitEvery);
        Optional<BagMaterial> material = Optional.ofNullable(season.materials().get(bagging.material()));
        return newest(head, bagging, mark)
                .filter(lent -> lent.runsAt(mark))
                .flatMap(lent -> material.flatMap(known -> fit(lent, known, mark)));
    }

    /** The instant at which a bag is judged next by a sensor in it; {@link Instant#MAX} if none ever hung on its head. */
    Instant nextFit(Head head, Instant now) {
        boolean lent =
                season.register().loans().stream().anyMatch(loan -> loan.tag().equals(head.tag()));
        return lent ? floor(now, fitEvery).plus(fitEvery) : Instant.MAX;
    }

    private Optional<BagFit> fit(Lessons.Lent lent, BagMaterial material, Instant mark) {
        List<BagLesson> others = lessonsAt(mark).taught().stream()
                .filter(one -> one.bagging().material().equals(material.id()))
                .filter(one -> !one.loan().tag().equals(lent.loan().tag()))
                .flatMap(one -> one.lesson().stream())
                .toList();
        return LoanStudy.sensored(season.station(), lent, season.register().loans(), season.readings(), mark)
                .map(bag -> BagFitCheck.at(bag, new MaterialLearning(material, others)));
    }

    private Optional<Lessons.Lent> newest(Head head, Bagging bagging, Instant mark) {
        return anyLoan
                ? Lessons.lent(season.register(), mark).stream()
                        .filter(lent -> lent.head().tag().equals(head.tag())
                                && lent.bagging().putOn().equals(bagging.putOn()))
                        .max(Comparator.comparing(lent -> lent.loan().from()))
                : Optional.empty();
    }

    private List<Taught> taughtAt(Instant epoch) {
        List<LoanStudy> studies = Lessons.lent(season.register(), epoch).stream()
                .flatMap(lent -> study(lent, epoch).stream())
                .toList();
        return Lessons.known(studies, season.materials(), Map.of(), Map.of(), epoch)
                .taught();
    }

    private Optional<LoanStudy> study(Lessons.Lent lent, Instant epoch) {
        boolean over =
                !lent.runsAt(epoch) && lent.end(epoch).plus(LoanStudy.BESIDE).isBefore(epoch);
        if (over && ended.containsKey(lent)) {
            return ended.get(lent);
        }
        Optional<LoanStudy> study = Optional.ofNullable(
                        season.materials().get(lent.bagging().material()))
                .flatMap(material -> LoanStudy.of(
                        season.station(), lent, season.register().loans(), material, season.readings(), epoch));
        if (over) {
            ended.put(lent, study);
        }
        return study;
    }

    private static Instant floor(Instant instant, Duration step) {
        long millis = step.toMillis();
        return Instant.ofEpochMilli(Math.floorDiv(instant.toEpochMilli(), millis) * millis);
    }
}
