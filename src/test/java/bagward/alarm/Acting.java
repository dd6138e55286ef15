package bagward.alarm;

import bagward.bag.Quantile;
import java.util.List;

/** Rules that differ from another one in a single thing. */
public final class Acting {
    private Acting() {}

    /** The same rule, acting on a quantile. */
    public static Rule on(Quantile quantile, Rule rule) {
        return like(rule, rule.otherLimits(), quantile);
    }

    /** The same rule, with other limits for some houses, materials or crops. */
    public static Rule withLimits(Rule rule, OtherLimit... limits) {
        return like(rule, List.of(limits), rule.actsOn());
    }

    private static Rule like(Rule rule, List<OtherLimit> limits, Quantile quantile) {
        return new Rule(
                rule.id(),
                rule.name(),
                rule.kind(),
                rule.limit(),
                rule.deadband(),
                rule.onDelay(),
                rule.offDelay(),
                rule.reAlarm(),
                limits,
                quantile,
                rule.togetherFrom(),
                rule.priority(),
                rule.card());
    }
}
