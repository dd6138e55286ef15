package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.Quantile;
import bagward.bag.TagCode;
import bagward.climate.RegularSeries;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;

/** What damp and hot have in common: the newest spell of one part of a bag climate against a limit. */
final class BagClimateRule {
    /** Against a limit in %RH. */
    static final BagClimateRule DAMP = new BagClimateRule("damp", 0);

    /** Against a limit in °C. */
    static final BagClimateRule HOT = new BagClimateRule("hot", 1);

    private final String adjective;
    private final int digits;

    /**
     * @param adjective what the bag is at or above the limit
     * @param digits digits after the point that the part deserves
     */
    private BagClimateRule(String adjective, int digits) {
        this.adjective = adjective;
        this.digits = digits;
    }

    /** The words and digits of a kind that looks at the climate in a bag. */
    static BagClimateRule of(RuleKind kind) {
        return kind == RuleKind.BAG_HOT ? HOT : DAMP;
    }

    /** What a bag is at or above the limit. */
    String adjective() {
        return adjective;
    }

    /** A value with the digits that it deserves and its unit. */
    String figure(double value, RuleKind kind) {
        return Words.number(value, digits) + " " + kind.unit();
    }

    Verdict judge(Rule rule, TagCode tag, BagClimate climate, RegularSeries part, Instant now) {
        Spell spell = Spell.newest(part, rule.limit(), rule.deadband(), now);
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(tag));
        return new Verdict(
                key,
                spell.outcome(),
                spell.since(),
                spell.value(),
                says(rule, spell, measured(part, climate.measured(), now), now));
    }

    private String says(Rule rule, Spell spell, boolean measured, Instant now) {
        String lasted = Words.duration(Duration.between(spell.since(), now));
        String unit = " " + rule.kind().unit();
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
            case UNKNOWN, SUPPRESSED, COVERED -> "not known whether " + adjective + ": no data for " + lasted;
        };
    }

    /**
     * Whether the newest value of a part of a climate was measured in the bag.
     *
     * @param measured cells in which a sensor in the bag was heard
     */
    static boolean measured(RegularSeries part, BitSet measured, Instant now) {
        int cell = Math.min(part.grid().size() - 1, part.grid().indexOf(now));
        for (int i = cell; i >= 0; i--) {
            if (part.known(i)) {
                return measured.get(i);
            }
        }
        return false;
    }
}
