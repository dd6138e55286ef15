package bagward.board;

import bagward.bag.BagBelief;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.MaterialId;
import bagward.bag.MaterialLearning;
import bagward.bag.Outlook;
import bagward.bag.TagCode;
import bagward.mould.NightRule;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was learnt from lent sensors and past nights; a function of readings and register, costlier than the rest of a
 * board and slower to change. A bag teaches once, by the loan that taught longest.
 *
 * @param taught one for each sensor and each bag it hung in
 * @param outlooks what is to be expected in each house until the next morning
 * @param weeks whether the last week of each house favoured grey mould
 */
public record Knowledge(List<Taught> taught, Map<HouseId, Outlook> outlooks, Map<HouseId, NightRule.Verdict> weeks) {
    /** Nothing but the priors. */
    public static final Knowledge NONE = new Knowledge(List.of(), Map.of(), Map.of());

    /** Copies the collections. */
    public Knowledge {
        taught = List.copyOf(taught);
        outlooks = Map.copyOf(outlooks);
        weeks = Map.copyOf(weeks);
    }

    /** The outlook of a house. */
    public Outlook outlook(HouseId house, Instant now) {
        return Optional.ofNullable(outlooks.get(house))
                .orElseGet(() -> new Outlook.None(now, "No outlook was made for this house yet."));
    }

    /** Whether the last week of a house favoured grey mould; empty if nobody looked. */
    public Optional<NightRule.Verdict> week(HouseId house) {
        return Optional.ofNullable(weeks.get(house));
    }

    /** What the newest sensor in a bag has told; empty if none hung in it. */
    public Optional<Taught> of(TagCode tag, Bagging bagging) {
        return taught.stream()
                .filter(one ->
                        one.loan().tag().equals(tag) && one.bagging().putOn().equals(bagging.putOn()))
                .max(Comparator.comparing(one -> one.loan().from()));
    }

    /** What the bags of a material taught. */
    public MaterialLearning learning(BagMaterial material) {
        return new MaterialLearning(material, List.copyOf(lessons(material.id()).values()));
    }

    /** What is believed of a bag, of its own sensor first and else of its material's. */
    public BagBelief belief(MaterialLearning learning, TagCode tag, Bagging bagging) {
        return Optional.ofNullable(lessons(bagging.material()).get(new Bag(tag, bagging.putOn())))
                .map(learning::sensored)
                .orElseGet(learning::unsensored);
    }

    private Map<Bag, BagLesson> lessons(MaterialId material) {
        Map<Bag, BagLesson> lessons = new HashMap<>();
        for (Taught one : taught) {
            if (one.bagging().material().equals(material)) {
                one.lesson()
                        .ifPresent(lesson -> lessons.merge(
                                new Bag(one.loan().tag(), one.bagging().putOn()),
                                lesson,
                                (a, b) -> a.days() >= b.days() ? a : b));
            }
        }
        return lessons;
    }

    private record Bag(TagCode tag, Instant putOn) {}
}
