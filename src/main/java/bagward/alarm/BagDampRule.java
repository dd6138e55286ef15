package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.TagCode;
import java.time.Instant;

/** Judges whether a bag is damp: its humidity against the limit in %RH. */
public final class BagDampRule {
    private BagDampRule() {}

    /**
     * Judges one bag.
     *
     * @param rule of kind {@link RuleKind#BAG_DAMP}
     * @param tag the head the bag is on
     * @param climate inside the bag since it was put on, as the quantile has it that the rule acts on
     * @param now the time to judge at
     */
    public static Verdict judge(Rule rule, TagCode tag, BagClimate climate, Instant now) {
        return BagClimateRule.DAMP.judge(rule, tag, climate, climate.humidity().middle(), now);
    }
}
