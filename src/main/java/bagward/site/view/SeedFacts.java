package bagward.site.view;

import bagward.climate.TimeAtLeast;
import bagward.mould.GrowthClass;
import bagward.mould.LotStay;
import bagward.mould.SeedStay;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the air of a drying place meant for the seed that hung there, line by line. */
final class SeedFacts {
    private SeedFacts() {}

    static List<Fact> of(LotStay stay, SeedStay seed, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        String heading = stay.newest()
                .map(air -> air.moisture().says()
                        + " of the moist seed (estimated from the newest hour of air; the seed follows over days)")
                .orElse("not known: the air of the last six hours was not heard");
        facts.add(new Fact("Moisture it is heading for", heading));
        facts.add(new Fact("Dry enough for storage", dryEnough(seed, zone)));
        facts.add(new Fact("Storage fungi", fungi(seed)));
        facts.add(new Fact("Speed of mould", growth(seed)));
        return facts;
    }

    private static String dryEnough(SeedStay seed, ZoneId zone) {
        String open = seed.dryEnough().unknown().isZero()
                ? ""
                : "; " + Words.span(seed.dryEnough().unknown()) + " are unknown or open";
        return seed.firstDryEnough()
                        .map(first -> "the air was so for "
                                + Words.span(seed.dryEnough().known()) + ", first " + Words.dayAndClock(first, zone))
                        .orElse("the air never was for certain")
                + open;
    }

    private static String fungi(SeedStay seed) {
        String could = seed.fungi().stream()
                .filter(fungus -> !fungus.time().known().isZero())
                .map(fungus ->
                        fungus.fungus().name() + " " + Words.span(fungus.time().known()))
                .collect(Collectors.joining(", "));
        Duration unknown = seed.fungi().stream()
                .map(SeedStay.FungusHours::time)
                .map(TimeAtLeast::unknown)
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
        String gaps = unknown.isZero() ? "" : "; " + Words.span(unknown) + " are without data";
        return (could.isEmpty() ? "the air was too dry for those of the table" : "could grow: " + could) + gaps;
    }

    private static String growth(SeedStay seed) {
        return seed.worst()
                .map(worst -> worst == GrowthClass.NONE
                        ? "the air allowed no growth"
                        : "at worst " + worst.words() + ", for "
                                + Words.span(seed.growth().getOrDefault(worst, Duration.ZERO))
                                + " (on building material, for comparison)")
                .orElse("not known");
    }
}
