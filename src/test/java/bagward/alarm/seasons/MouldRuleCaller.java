package bagward.alarm.seasons;

import bagward.alarm.BagMouldRule;
import bagward.alarm.Rule;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.NightOutlook;
import bagward.bag.Outlook;
import bagward.bag.Quantile;
import bagward.bag.Sky;
import bagward.bag.TagCode;
import bagward.mould.Ahead;
import bagward.mould.MouldCourse;
import bagward.mould.Organism;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A rule of kind bag-mould as shipped, looked at once an hour. The course of a whole week serves every hour: what it says of
 * an hour never depends on what was measured later.
 */
record MouldRuleCaller(
        String name,
        Rule rule,
        List<Organism> organisms,
        Function<SeasonBag, BagClimate> climate,
        Quantile actsOn,
        boolean tonight)
        implements Caller {
    private static final TagCode TAG = new TagCode("SIM-1");

    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        BagClimate inside = damp(climate.apply(bag));
        MouldCourse course = MouldCourse.of(inside, organisms);
        for (Instant now = bag.putOn().plus(Duration.ofHours(1));
                !now.isAfter(bag.takenOff());
                now = now.plus(Duration.ofHours(1))) {
            Optional<Ahead> ahead = tonight && season.outlook(now) instanceof Outlook.Night night
                    ? Optional.of(course.ahead(
                            NightOutlook.inBag(night, bag.belief(), Sky.UNKNOWN).climate()))
                    : Optional.empty();
            Verdict verdict = new BagMouldRule(rule, now, ZoneOffset.UTC).judge(TAG, inside, course.high(), ahead);
            if (verdict.outcome() == Verdict.Outcome.HOLDS) {
                return Optional.of(now);
            }
        }
        return Optional.empty();
    }

    /** As the running program sees it: the quantile is one of humidity, temperature keeps its best value. */
    private BagClimate damp(BagClimate best) {
        BagClimate at = best.at(actsOn);
        return new BagClimate(best.temperature(), at.humidity(), best.measured(), at.film());
    }
}
