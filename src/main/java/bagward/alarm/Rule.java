package bagward.alarm;

import bagward.bag.Quantile;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * One condition that needs a person.
 *
 * @param id short name
 * @param name as people read it
 * @param kind what it looks at
 * @param limit in the unit of the kind
 * @param deadband how far back past the limit the value must fall before the condition ends, unit of the kind
 * @param onDelay how long the condition must hold before the alarm is raised
 * @param offDelay how long it must be gone before the alarm returns
 * @param reAlarm how long after it was confirmed an alarm that still holds asks again; empty for never
 * @param otherLimits limits for single houses, materials and crops; the first that fits counts
 * @param actsOn which value of an estimate it is judged by; measured values are taken as they are
 * @param togetherFrom from so many bags of a house on that meet it at once, the house calls instead of each of them, 2 or
 *     more; empty if each bag calls for itself
 * @param priority how much it matters
 * @param card what to do
 */
public record Rule(
        RuleId id,
        String name,
        RuleKind kind,
        double limit,
        double deadband,
        Duration onDelay,
        Duration offDelay,
        Optional<Duration> reAlarm,
        List<OtherLimit> otherLimits,
        Quantile actsOn,
        Optional<Integer> togetherFrom,
        Priority priority,
        ActionCard card) {
    /** Copies the list. */
    public Rule {
        otherLimits = List.copyOf(otherLimits);
    }

    /** A rule that has the same limit everywhere and acts on the best value. */
    public Rule(
            RuleId id,
            String name,
            RuleKind kind,
            double limit,
            double deadband,
            Duration onDelay,
            Duration offDelay,
            Optional<Duration> reAlarm,
            Priority priority,
            ActionCard card) {
        this(
                id,
                name,
                kind,
                limit,
                deadband,
                onDelay,
                offDelay,
                reAlarm,
                List.of(),
                Quantile.MIDDLE,
                Optional.empty(),
                priority,
                card);
    }

    /** A rule that asks once. */
    public Rule(
            RuleId id,
            String name,
            RuleKind kind,
            double limit,
            double deadband,
            Duration onDelay,
            Duration offDelay,
            Priority priority,
            ActionCard card) {
        this(id, name, kind, limit, deadband, onDelay, offDelay, Optional.empty(), priority, card);
    }

    /** The same rule, by which a house calls from so many bags on. */
    public Rule together(int from) {
        return new Rule(
                id,
                name,
                kind,
                limit,
                deadband,
                onDelay,
                offDelay,
                reAlarm,
                otherLimits,
                actsOn,
                Optional.of(from),
                priority,
                card);
    }

    /** The rule with the limit that it has for a thing in its circumstances. */
    public Rule at(Circumstances circumstances) {
        return otherLimits.stream()
                .filter(other -> other.fits(circumstances))
                .findFirst()
                .map(other -> new Rule(
                        id,
                        name,
                        kind,
                        other.limit(),
                        deadband,
                        onDelay,
                        offDelay,
                        reAlarm,
                        otherLimits,
                        actsOn,
                        togetherFrom,
                        priority,
                        card))
                .orElse(this);
    }
}
