package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.Origin;
import bagward.bag.Quantile;
import bagward.bag.TagCode;
import bagward.climate.RegularSeries;
import java.time.Duration;
import java.time.Instant;

/** What damp and hot have in common: the newest spell of one part of a bag climate against a limit. */
final class BagClimateRule {
    private final String adjective;
    private final int digits;

    /**
     * @param adjective what the bag is at or above the limit
     * @param digits digits after the point that the part deserves
     */
    BagClimateRule(String adjective, int digits) {
        this.adjective = adjective;
        this.digits = digits;
    }

    Verdict judge(Rule rule, TagCode tag, BagClimate climate, RegularSeries part, Instant now) {
        Spell spell = Spell.newest(part, rule.limit(), rule.deadband(), now);
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(tag));
        return new Verdict(key, spell.outcome(), spell.since(), spell.value(), says(rule, spell, climate, now));
    }

    private String says(Rule rule, Spell spell, BagClimate climate, Instant now) {
        String lasted = Words.duration(Duration.between(spell.since(), now));
        String unit = " " + rule.kind().unit();
        boolean measured = measured(climate, now);
        String by = measured || rule.actsOn().equals(Quantile.MIDDLE)
                ? ""
                : " by " + rule.actsOn().words();
        String numbers = ": " + Words.number(spell.value(), digits) + unit + " now" + by + ", limit "
                + Words.number(rule.limit(), 1) + unit + ", " + (measured ? "measured" : "estimated");
        String unknown = spell.unknown().compareTo(Spell.FRESH) > 0
                ? ", of which " + Words.duration(spell.unknown()) + " without data"
                : "";
        return switch (spell.outcome()) {
            case HOLDS -> adjective + " " + lasted + unknown + numbers;
            case CLEAR -> "not " + adjective + " for " + lasted + unknown + numbers;
            case UNKNOWN, SUPPRESSED -> "not known whether " + adjective + ": no data for " + lasted;
        };
    }

    private static boolean measured(BagClimate climate, Instant now) {
        int cells = climate.grid().size();
        int cell = Math.min(cells - 1, climate.grid().indexOf(now));
        for (int i = cell; i >= 0; i--) {
            if (climate.temperature().middle().known(i)) {
                return climate.originAt(i) == Origin.MEASURED;
            }
        }
        return false;
    }
}
