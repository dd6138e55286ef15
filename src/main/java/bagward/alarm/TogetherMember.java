package bagward.alarm;

import bagward.bag.TagCode;
import bagward.climate.RegularSeries;
import java.time.Instant;
import java.util.BitSet;
import java.util.Optional;

/**
 * A bag as a rule by which houses call sees it.
 *
 * @param tag of its head
 * @param verdict what the rule says of it alone
 * @param limit the one that it has there, in the unit of the rule's kind
 * @param measured whether its newest value was measured in it; only asked for while it meets the rule
 * @param lastMet while it does not, when it last ceased to; empty if it never met the rule, or not within {@link TogetherRule#MEMORY}
 */
public record TogetherMember(TagCode tag, Verdict verdict, double limit, boolean measured, Optional<Instant> lastMet) {
    /**
     * A bag by its spells.
     *
     * @param there the rule with the limit that it has there
     * @param verdict what the rule says of it alone
     * @param series the part of its climate that the rule looks at
     * @param spells of that series
     * @param measured cells in which a sensor in the bag was heard
     */
    public static TogetherMember of(
            TagCode tag,
            Rule there,
            Verdict verdict,
            RegularSeries series,
            SpellLine spells,
            BitSet measured,
            Instant now) {
        boolean met = verdict.met();
        return new TogetherMember(
                tag,
                verdict,
                there.limit(),
                met && BagClimateRule.measured(series, measured, now),
                met ? Optional.empty() : spells.endedBy(now).filter(now.minus(TogetherRule.MEMORY)::isBefore));
    }
}
