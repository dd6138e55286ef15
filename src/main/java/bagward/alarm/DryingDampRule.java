package bagward.alarm;

import bagward.bag.HangingTimes;
import bagward.climate.RegularSeries;
import bagward.station.House;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Judges whether the air of a drying place is too damp for the seed lots that hang there: its humidity against the limit in
 * %RH. A place in which nothing is entered as hanging calls nobody.
 */
public final class DryingDampRule {
    private DryingDampRule() {}

    /**
     * Judges one place.
     *
     * @param general of kind {@link RuleKind#DRYING_DAMP}
     * @param place where seed dries
     * @param humidity of its air, %RH, as far back as the rule should see
     * @param hanging when seed lots hung there
     * @param now the time to judge at
     */
    public static Verdict judge(Rule general, House place, RegularSeries humidity, HangingTimes hanging, Instant now) {
        Rule rule = general.at(Circumstances.of(place.id()));
        Spell spell = Spell.newest(humidity, rule.limit(), rule.deadband(), now);
        AlarmKey key = new AlarmKey(rule.id(), new Subject.InHouse(place.id()));
        Optional<Instant> hangingSince = hanging.since(now);
        if (hangingSince.isEmpty()) {
            Instant since = hanging.lastEnd(now).orElse(humidity.grid().start());
            return new Verdict(
                    key, Verdict.Outcome.CLEAR, since, spell.value(), "no seed lot is entered as hanging there");
        }
        Instant since = later(spell.since(), hangingSince.get());
        return new Verdict(key, spell.outcome(), since, spell.value(), says(rule, spell, since, now));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static String says(Rule rule, Spell spell, Instant since, Instant now) {
        String lasted = Words.duration(Duration.between(since, now));
        String unit = " " + rule.kind().unit();
        boolean whole = since.equals(spell.since());
        String unknown = whole && spell.unknown().compareTo(Spell.FRESH) > 0
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
