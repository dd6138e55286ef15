package bagward.alarm.seasons;

import bagward.alarm.HeldSpan;
import bagward.alarm.Rule;
import bagward.alarm.SpellLine;
import java.time.Instant;
import java.util.Optional;

/** A rule of kind bag-damp as shipped, on the estimated climate. */
record DampRuleCaller(Rule rule) implements Caller {
    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        SpellLine spells =
                new SpellLine(bag.inside().at(rule.actsOn()).humidity().middle(), rule.limit(), rule.deadband());
        for (HeldSpan span : spells.within(bag.putOn(), bag.takenOff())) {
            Instant raised = span.from().plus(rule.onDelay());
            if (raised.isBefore(span.to())) {
                return Optional.of(raised);
            }
        }
        return Optional.empty();
    }

    @Override
    public String name() {
        return "rule " + rule.id();
    }
}
