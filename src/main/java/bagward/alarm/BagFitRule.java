package bagward.alarm;

import bagward.bag.BagFit;
import bagward.bag.TagCode;

/**
 * Judges by the sensor in a bag whether the bag has fallen shut, or was blown off: how far its closure has moved from what
 * is expected of this bag, in shares of closure, once {@link bagward.bag.BagFitCheck} is sure that it has moved at all.
 */
public final class BagFitRule {
    private BagFitRule() {}

    /**
     * Judges one bag.
     *
     * @param rule of kind {@link RuleKind#BAG_SHUT} or {@link RuleKind#BAG_OFF}
     * @param tag the head the bag is on
     * @param fit how the bag sits
     */
    public static Verdict judge(Rule rule, TagCode tag, BagFit fit) {
        boolean shut = rule.kind() == RuleKind.BAG_SHUT;
        double moved = (shut ? 1 : -1) * (fit.closure() - fit.expected().mean());
        BagFit.Verdict called = shut ? BagFit.Verdict.SHUT : BagFit.Verdict.OFF;
        boolean holds = fit.verdict() == called && moved >= rule.limit() - rule.deadband();
        return new Verdict(
                new AlarmKey(rule.id(), new Subject.Bag(tag)),
                fit.verdict() == BagFit.Verdict.UNKNOWN
                        ? Verdict.Outcome.UNKNOWN
                        : holds ? Verdict.Outcome.HOLDS : Verdict.Outcome.CLEAR,
                fit.since(),
                moved,
                fit.because());
    }
}
