package bagward.site.view;

import bagward.bag.FlowerSigns;
import bagward.mould.Ahead;
import bagward.mould.BagStage;
import bagward.mould.HarvestDays;
import bagward.mould.HeadCare;
import bagward.mould.HeatAssessment;
import bagward.mould.Reach;
import bagward.mould.RiskBand;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What tonight, heat and the calendar mean for a head, line by line. */
final class CareFacts {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private CareFacts() {}

    static List<Fact> of(HeadCare care, FlowerSigns flowers, RiskBand now, Instant at, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        care.ahead().ifPresent(ahead -> facts.add(new Fact("Mould tonight", tonight(ahead, now, zone))));
        facts.add(new Fact("Heat in the bag", heat(care.heat(), at)));
        care.notes().forEach(note -> facts.add(new Fact("For the seed lot", Words.sentence(note.text()))));
        facts.add(new Fact("Time in the bag", stage(care, flowers, at, zone)));
        facts.add(new Fact("Pods ripe", ripe(care.ripening())));
        return facts;
    }

    private static String tonight(Ahead ahead, RiskBand now, ZoneId zone) {
        if (now == RiskBand.HIGH) {
            return "High already; what comes tonight changes no band.";
        }
        Optional<Reach> next = ahead.nextAbove(now);
        String until = Words.clock(ahead.until(), zone);
        return next.map(reach -> "If it goes as the outlook says, " + word(reach.band()) + " estimated risk about "
                        + Words.clock(reach.at(), zone) + ": " + reach.reason()
                        + ". Swap the bag or take it off before.")
                .orElse("No higher band expected until " + until
                        + " if it goes as the outlook says. Look all the same.");
    }

    private static String word(RiskBand band) {
        return band.name().toLowerCase(Locale.ROOT);
    }

    private static String heat(HeatAssessment heat, Instant now) {
        String worst = switch (heat.worst()) {
            case NONE -> "not warm so far: ";
            case WATCH -> "warm enough to watch: ";
            case HEAT -> "hot for hours, fewer seeds are to be expected: ";
            case POLLEN_LOSS -> "so hot that pollen was likely lost: ";
        };
        String since = heat.sinceHeat(now)
                .map(Duration::toHours)
                .map(hours -> "; last heat " + Words.oneDecimal(hours / 24.0) + " days ago, about a week to recover")
                .orElse("");
        return Words.sentence(worst + heat.reason() + since);
    }

    private static String stage(HeadCare care, FlowerSigns flowers, Instant now, ZoneId zone) {
        BagStage stage = care.dates().stageAt(now);
        return switch (stage) {
            case STAYS_ON ->
                flowers.equals(FlowerSigns.NOT_NOTED)
                        ? "Stays on. Enter when its petals have dropped or its last flower has opened, and an earlier day follows."
                        : "Stays on. By what was seen of its flowers it may come off from "
                                + Words.dayAndClock(care.dates().earliest(), zone)
                                + " on if there is a reason; look first.";
            case MAY_COME_OFF ->
                "May come off if there is a reason, by what was seen of its flowers; look first."
                        + " Safety of an early removal is not promised.";
            case DUE -> "Its time is over.";
            case OVERDUE -> {
                long steps = care.dates().overdueSteps(now);
                yield "Overdue by " + Words.count(steps, "step", "steps") + " of "
                        + Words.span(care.dates().overdueEvery()) + ".";
            }
        };
    }

    private static String ripe(HarvestDays days) {
        return "About " + days.first().format(DAY) + " to " + days.last().format(DAY)
                + " by the days of the crop; for information, look at the pods.";
    }
}
