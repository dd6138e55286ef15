package bagward.alarm;

import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;

/** Judges whether a bag should come off: the due time plus the rule's limit in days. Never unknown, never noisy. */
public final class BagDueRule {
    private static final double SECONDS_A_DAY = 86_400;

    private BagDueRule() {}

    /**
     * Judges one bag.
     *
     * @param rule of kind {@link RuleKind#BAG_DUE}
     * @param tag the head the bag is on
     * @param putOn when the bag was put on
     * @param due when it is due to come off
     * @param now the time to judge at
     */
    public static Verdict judge(Rule rule, TagCode tag, Instant putOn, Instant due, Instant now) {
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(tag));
        Instant from = due.plusSeconds(Math.round(rule.limit() * SECONDS_A_DAY));
        double past = Duration.between(due, now).toSeconds() / SECONDS_A_DAY;
        String on = "on for " + Words.duration(Duration.between(putOn, now));
        if (now.isBefore(from)) {
            return new Verdict(key, Verdict.Outcome.CLEAR, putOn, past, on);
        }
        return new Verdict(key, Verdict.Outcome.HOLDS, from, past, on + ", " + due(Duration.between(due, now)));
    }

    private static String due(Duration late) {
        return late.toMinutes() < 1 ? "due to come off now" : "was due to come off " + Words.duration(late) + " ago";
    }
}
