package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.station.House;
import java.time.Duration;
import java.time.Instant;

/** Judges whether the air of a drying place is damp: its humidity against the limit in %RH. */
public final class DryingDampRule {
    private DryingDampRule() {}

    /**
     * Judges one place.
     *
     * @param general of kind {@link RuleKind#DRYING_DAMP}
     * @param place where seed dries
     * @param humidity of its air, %RH, as far back as the rule should see
     * @param now the time to judge at
     */
    public static Verdict judge(Rule general, House place, RegularSeries humidity, Instant now) {
        Rule rule = general.at(Circumstances.of(place.id()));
        Spell spell = Spell.newest(humidity, rule.limit(), rule.deadband(), now);
        AlarmKey key = new AlarmKey(rule.id(), new Subject.InHouse(place.id()));
        return new Verdict(key, spell.outcome(), spell.since(), spell.value(), says(rule, spell, now));
    }

    private static String says(Rule rule, Spell spell, Instant now) {
        String lasted = Words.duration(Duration.between(spell.since(), now));
        String unit = " " + rule.kind().unit();
        String unknown = spell.unknown().compareTo(Spell.FRESH) > 0
                ? ", of which " + Words.duration(spell.unknown()) + " without data"
                : "";
        String numbers = ": " + Words.number(spell.value(), 0) + unit + " now, limit " + Words.number(rule.limit(), 1)
                + unit + ", measured";
        return switch (spell.outcome()) {
            case HOLDS -> "too damp for drying seed for " + lasted + unknown + numbers;
            case CLEAR -> "not too damp for drying seed for " + lasted + unknown + numbers;
            case UNKNOWN, SUPPRESSED, COVERED -> "not known whether too damp for drying seed, no data for " + lasted;
        };
    }
}
