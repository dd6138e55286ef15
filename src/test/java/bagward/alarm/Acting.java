package bagward.alarm;

import bagward.bag.Quantile;

/** Rules that act on another value of an estimate. */
public final class Acting {
    private Acting() {}

    /** The same rule, acting on a quantile. */
    public static Rule on(Quantile quantile, Rule rule) {
        return new Rule(
                rule.id(),
                rule.name(),
                rule.kind(),
                rule.limit(),
                rule.deadband(),
                rule.onDelay(),
                rule.offDelay(),
                rule.reAlarm(),
                rule.otherLimits(),
                quantile,
                rule.priority(),
                rule.card());
    }
}
