package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.TagCode;
import java.time.Instant;

/** Judges whether a bag is hot: its temperature against the limit in °C. */
public final class BagHotRule {
    private BagHotRule() {}

    /**
     * Judges one bag.
     *
     * @param rule of kind {@link RuleKind#BAG_HOT}
     * @param tag the head the bag is on
     * @param climate inside the bag since it was put on, as the quantile has it that the rule acts on
     * @param now the time to judge at
     */
    public static Verdict judge(Rule rule, TagCode tag, BagClimate climate, Instant now) {
        return BagClimateRule.HOT.judge(
                rule, tag, climate, climate.temperature().middle(), now);
    }
}
