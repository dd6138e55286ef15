package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.Quantile;
import bagward.bag.TagCode;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.Ahead;
import bagward.mould.Reach;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * Judges whether the estimated mould risk of a head is high, or will be so soon if tonight goes as the outlook says. What
 * has been reached stays so for as long as a bag is on. What is only expected can be taken back by a later outlook; its
 * time is that of the outlook, so an off-delay of an hour or more keeps the alarm until the outlooks of the night end.
 */
public final class BagMouldRule {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Rule rule;
    private final Instant now;
    private final ZoneId zone;

    /**
     * @param rule of kind {@link RuleKind#BAG_MOULD}
     * @param now the time to judge at
     * @param zone of the times in the message
     */
    public BagMouldRule(Rule rule, Instant now, ZoneId zone) {
        this.rule = rule;
        this.now = now;
        this.zone = zone;
    }

    /**
     * Judges one head.
     *
     * <p>All that is given follows from the humidity that the rule acts on.
     *
     * @param tag its tag
     * @param climate inside the bag that is on, for whether anything is known now
     * @param high when the risk became high, as far as is known; what lies after now is not looked at
     * @param ahead what the outlook would add
     */
    public Verdict judge(TagCode tag, BagClimate climate, Optional<Reach> high, Optional<Ahead> ahead) {
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(tag));
        Optional<Reach> reached = high.filter(reach -> !reach.at().isAfter(now));
        if (reached.isPresent()) {
            Reach reach = reached.get();
            String lasting = Words.duration(Duration.between(reach.at(), now));
            return new Verdict(
                    key,
                    Verdict.Outcome.HOLDS,
                    reach.at(),
                    0,
                    "high estimated risk for " + lasting + ": " + reach.reason() + by());
        }
        if (!heard(climate)) {
            return new Verdict(
                    key,
                    Verdict.Outcome.UNKNOWN,
                    climate.grid().start(),
                    Double.NaN,
                    "mould risk not known: no data now");
        }
        return expected(key, climate, ahead);
    }

    private Verdict expected(AlarmKey key, BagClimate climate, Optional<Ahead> ahead) {
        Instant since = ahead.map(Ahead::issuedAt).orElse(climate.grid().start());
        Optional<Reach> soon = ahead.flatMap(Ahead::high).filter(this::withinLimit);
        return soon.map(reach -> new Verdict(
                        key,
                        Verdict.Outcome.HOLDS,
                        since,
                        hoursTo(reach),
                        "high risk expected about " + CLOCK.format(reach.at().atZone(zone))
                                + " if tonight goes as the outlook says: " + reach.reason() + by()))
                .orElseGet(() -> new Verdict(
                        key, Verdict.Outcome.CLEAR, since, Double.NaN, "no high risk so far nor in the outlook"));
    }

    private String by() {
        return rule.actsOn().equals(Quantile.MIDDLE)
                ? ""
                : "; where humidity is not measured, by " + rule.actsOn().words();
    }

    private boolean withinLimit(Reach reach) {
        return rule.limit() > 0 && hoursTo(reach) <= rule.limit();
    }

    private double hoursTo(Reach reach) {
        return Duration.between(now, reach.at()).toSeconds() / 3600.0;
    }

    private boolean heard(BagClimate climate) {
        RegularSeries humidity = climate.humidity().middle();
        TimeGrid grid = climate.grid();
        for (int i = Math.min(grid.size() - 1, grid.indexOf(now)); i >= 0; i--) {
            if (grid.at(i + 1).plus(Spell.FRESH).isBefore(now)) {
                return false;
            }
            if (humidity.known(i)) {
                return true;
            }
        }
        return false;
    }
}
