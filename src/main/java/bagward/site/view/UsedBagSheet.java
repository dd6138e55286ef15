package bagward.site.view;

import bagward.mould.UsedBag;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * What a bag that was used before went through.
 *
 * @param warning why a new bag should be used; empty if nothing speaks against it
 * @param facts its uses, oldest first, and where its mould index stands
 */
public record UsedBagSheet(String warning, List<Fact> facts) {
    /** Copies the list. */
    public UsedBagSheet {
        facts = List.copyOf(facts);
    }

    /** The sheet of a bag. */
    public static UsedBagSheet of(UsedBag bag, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        bag.uses().forEach(use -> facts.add(new Fact("On head " + use.head(), use(use, zone))));
        facts.add(new Fact(
                "Between its uses",
                "the mould index is kept as it was: nobody knows the climate in which the bag lay"));
        facts.add(new Fact(
                "Mould index of the bag now",
                LotWords.index(bag.here().index().end()) + " (first growth at 1, visible at 3): "
                        + LotWords.band(bag.band()) + gaps(bag.here())));
        return new UsedBagSheet(warning(bag), facts);
    }

    private static String use(UsedBag.Use use, ZoneId zone) {
        return Words.dayAndClock(use.putOn(), zone) + " to " + Words.dayAndClock(use.takenOff(), zone) + ", "
                + Words.span(Duration.between(use.putOn(), use.takenOff())) + "; mould index "
                + LotWords.twoDecimals(use.index().end().index()) + " afterwards" + gaps(use);
    }

    private static String gaps(UsedBag.Use use) {
        return LotWords.unknown(use.index().unknownHours())
                .map(text -> "; " + text)
                .orElse("");
    }

    private static String warning(UsedBag bag) {
        return bag.shouldBeReplaced()
                ? "this one reached a mould index of "
                        + LotWords.twoDecimals(bag.here().index().end().highest())
                        + " over its uses (estimated). Open it with care: moisten or close it first, wear a mask, and leave it"
                        + " to others if you have asthma or a weak immune defence. Rules of your station come first."
                : "";
    }
}
