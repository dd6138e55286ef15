package bagward.board;

import bagward.alarm.Rule;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.BagFit;
import bagward.bag.BagOutlook;
import bagward.bag.Quantile;
import bagward.mould.MouldCourse;
import bagward.mould.Organism;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One bag as the rules see it: each by the quantile of the estimate that it acts on.
 *
 * @param byQuantile the bag for each quantile that a rule acts on
 */
record SeenBag(Map<Quantile, JudgedBag> byQuantile) {
    /** Copies the map. */
    SeenBag {
        byQuantile = Map.copyOf(byQuantile);
    }

    /**
     * Looks at a bag as each of the rules wants it.
     *
     * @param best the bag by its best values
     * @param rules who will look at it
     * @param sinceFirst climate of the head since its first bag
     * @param organisms the mould table
     * @param tonight the outlook of the bag
     */
    static SeenBag of(
            JudgedBag best,
            List<Rule> rules,
            BagClimate sinceFirst,
            List<Organism> organisms,
            Optional<BagOutlook> tonight) {
        // Rules only ask whether the risk is high, so the rows that cannot be are not put to further quantiles.
        List<Organism> calling =
                organisms.stream().filter(row -> row.bands().canBeHigh()).toList();
        Map<Quantile, JudgedBag> seen = new HashMap<>();
        seen.put(Quantile.MIDDLE, best);
        for (Rule rule : rules) {
            seen.computeIfAbsent(rule.actsOn(), quantile -> {
                MouldCourse course = MouldCourse.of(damp(sinceFirst, quantile), calling);
                return new JudgedBag(
                        best.head(),
                        best.crop(),
                        best.bagging(),
                        best.climate().at(quantile),
                        course,
                        tonight.map(outlook -> course.ahead(damp(outlook.climate(), quantile))),
                        best.due(),
                        best.fit());
            });
        }
        return new SeenBag(seen);
    }

    /** For mould the quantile is one of humidity; warmth helps some organisms and hinders others, so it keeps its best value. */
    private static BagClimate damp(BagClimate climate, Quantile quantile) {
        BagClimate at = climate.at(quantile);
        return new BagClimate(climate.temperature(), at.humidity(), climate.measured(), at.film());
    }

    /** The same bag with another outlook, and another judgement by the sensor in it. */
    SeenBag knowing(Optional<BagOutlook> tonight, Optional<BagFit> fit) {
        Map<Quantile, JudgedBag> knowing = new HashMap<>();
        byQuantile.forEach((quantile, bag) -> knowing.put(
                quantile,
                bag.knowing(tonight.map(outlook -> bag.course().ahead(damp(outlook.climate(), quantile))), fit)));
        return new SeenBag(knowing);
    }

    /** What rules say of the bag, in their order; those that are not about bags say nothing. */
    List<Verdict> verdicts(List<Rule> rules, Instant now, ZoneId zone) {
        return rules.stream()
                .flatMap(rule -> seenBy(rule).verdict(rule, now, zone).stream())
                .toList();
    }

    /** The bag as one of the rules sees it. */
    JudgedBag seenBy(Rule rule) {
        return Objects.requireNonNull(byQuantile.get(rule.actsOn()), "a rule that was not named before");
    }
}
