package bagward.board;

import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Verdict;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One cause, one alarm: a bag that stays damp until its head is at risk calls by the risk alone. The damp rules are
 * suppressed by design while a mould alarm of the same head stands that came about in the same damp time. A risk of before,
 * under an earlier bag or an earlier spell, does not silence a bag that goes damp anew. Of several mould alarms of one head
 * those of the highest priority call.
 */
final class OneCause {
    private final Map<RuleId, Rule> rules = new HashMap<>();
    private final Instant now;

    OneCause(List<Rule> rules, Instant now) {
        rules.forEach(rule -> this.rules.put(rule.id(), rule));
        this.now = now;
    }

    /** The verdicts about one bag, those that say the same as another covered by it. */
    List<Verdict> of(List<Verdict> verdicts) {
        List<Verdict> risks = verdicts.stream()
                .filter(verdict -> is(verdict, RuleKind.BAG_MOULD) && raised(verdict))
                .toList();
        return risks.isEmpty()
                ? verdicts
                : verdicts.stream().map(verdict -> unless(verdict, risks)).toList();
    }

    private Verdict unless(Verdict verdict, List<Verdict> risks) {
        if (verdict.outcome() != Verdict.Outcome.HOLDS) {
            return verdict;
        }
        return risks.stream()
                .filter(risk -> saysSame(risk, verdict))
                .findFirst()
                .map(risk -> verdict.coveredBy("“" + name(risk) + "” calls for the same"))
                .orElse(verdict);
    }

    private boolean saysSame(Verdict risk, Verdict verdict) {
        if (is(verdict, RuleKind.BAG_DAMP)) {
            return !risk.since().isBefore(verdict.since());
        }
        return is(verdict, RuleKind.BAG_MOULD) && priority(risk).compareTo(priority(verdict)) > 0;
    }

    private Priority priority(Verdict verdict) {
        return rule(verdict).map(Rule::priority).orElse(Priority.LOW);
    }

    private boolean is(Verdict verdict, RuleKind kind) {
        return rule(verdict).filter(rule -> rule.kind() == kind).isPresent();
    }

    private boolean raised(Verdict verdict) {
        return verdict.outcome() == Verdict.Outcome.HOLDS
                && rule(verdict)
                        .filter(rule -> !now.isBefore(verdict.since().plus(rule.onDelay())))
                        .isPresent();
    }

    private String name(Verdict verdict) {
        return rule(verdict).map(Rule::name).orElse("");
    }

    private Optional<Rule> rule(Verdict verdict) {
        return Optional.ofNullable(rules.get(verdict.key().rule()));
    }
}
