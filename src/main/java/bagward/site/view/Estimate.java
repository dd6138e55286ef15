package bagward.site.view;

import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.bag.BagBelief;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Coverage;
import bagward.bag.Origin;
import bagward.bag.Quantile;
import bagward.bag.SensorOffset;
import bagward.bag.Spread;
import bagward.board.BagInsight;
import bagward.board.BagView;
import bagward.board.Measure;
import bagward.board.Taught;
import bagward.climate.Climate;
import bagward.climate.Light;
import bagward.climate.RegularSeries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How the climate in a bag comes to be known, in five lines for a breeder. */
public final class Estimate {
    private static final double HUNDRED_WATTS = 100;

    private Estimate() {}

    /** House, sun, material, what was learnt, how sure. */
    public static List<Fact> lines(BagView bag, Optional<BagMaterial> material, Climate house, List<Rule> rules) {
        BagInsight insight = bag.insight();
        List<Fact> lines = new ArrayList<>();
        lines.add(new Fact("House", house(house)));
        insight.belief().ifPresent(belief -> {
            lines.add(new Fact("Sun", sun(belief, house)));
            lines.add(new Fact("Material", material.map(Estimate::material).orElse("not in the table of materials")));
            lines.add(new Fact("What was learnt", learnt(belief, insight)));
        });
        lines.add(new Fact("How sure", sure(bag, rules)));
        return lines;
    }

    private static String house(Climate house) {
        double celsius = newest(house.temperature());
        double percent = newest(house.humidity());
        if (Double.isNaN(celsius + percent)) {
            return "The house has not been heard since this bag was put on, so nothing can be estimated.";
        }
        return "The air around the bag has " + Words.oneDecimal(celsius) + " °C and " + Words.whole(percent)
                + " %RH. Some of it gets in; the rest of the moisture comes from the head.";
    }

    private static String sun(BagBelief belief, Climate house) {
        String gain = "Each 100 W/m² of light warms the air in the bag by "
                + band(belief.sunGain(), HUNDRED_WATTS, "K") + ", within about "
                + Words.whole(belief.responseMinutes().mean()) + " min.";
        double light = newest(house.light());
        if (Double.isNaN(light)) {
            return gain + " The house has no light reading now, so the sun is only guessed from the clock.";
        }
        double watts = Math.max(0, light) / Light.MICROMOLES_PER_GLOBAL_WATT;
        return gain + " Now " + Words.whole(watts) + " W/m² fall on it: "
                + Words.oneDecimal(watts * belief.sunGain().mean()) + " K.";
    }

    private static String material(BagMaterial material) {
        return material.name() + ". Before any sensor hung in one: by night "
                + share(material.closureByNight()) + " of the way from house air to saturated air, by day "
                + share(material.closureByDay()) + ". " + material.source();
    }

    private static String learnt(BagBelief belief, BagInsight insight) {
        if (belief.sensoredBags() == 0) {
            return "Nothing yet: no bag of this material had a sensor for half a day. Hang a spare sensor into one.";
        }
        String from = insight.own()
                ? "A sensor hung in this very bag"
                        + insight.taught().map(Estimate::lesson).orElse("") + "."
                : "Sensors hung in " + Words.count(belief.sensoredBags(), "bag", "bags")
                        + " of this material, none in this one.";
        return from + " Now believed: by night " + share(belief.closureByNight()) + " of the way, by day "
                + share(belief.closureByDay()) + ".";
    }

    private static String lesson(Taught taught) {
        String days = taught.lesson()
                .map(BagLesson::days)
                .map(d -> " for " + Words.oneDecimal(d) + " days")
                .orElse("");
        boolean beside = !taught.pairOffset().equals(SensorOffset.UNKNOWN);
        String pair = beside
                ? "; a night beside the house sensor showed it to read "
                        + pair(taught.pairOffset().humidity().mean()) + ", which is allowed for"
                : "; it never hung beside the house sensor for a night, so an offset between the two is not known";
        return days + pair;
    }

    private static String pair(double more) {
        return Words.oneDecimal(Math.abs(more)) + " %RH " + (more < 0 ? "less" : "more");
    }

    private static String sure(BagView bag, List<Rule> rules) {
        if (Figures.known(bag.humidity()).isEmpty()) {
            return "Nothing is known of this bag now.";
        }
        Measure humidity = bag.humidity().orElseThrow();
        boolean measured = humidity.origin() == Origin.MEASURED;
        return (measured ? "Now measured by the sensor in it" : "Now estimated") + ": " + Words.whole(humidity.value())
                + " %RH, and in 90 of 100 hours between "
                + Words.whole(humidity.low()) + " and " + Words.whole(humidity.high())
                + ". " + (measured ? "Rules act on the measured value." : actedOn(humidity, rules))
                + " It is no look into the bag.";
    }

    /** What rules take an estimated humidity for; those that take another value than the best one are named with it. */
    private static String actedOn(Measure humidity, List<Rule> rules) {
        String others = rules.stream()
                .filter(rule -> !rule.actsOn().equals(Quantile.MIDDLE) && rule.kind() != RuleKind.BAG_HOT)
                .map(rule -> rule.name() + " acts on " + rule.actsOn().words() + ": "
                        + Words.whole(rule.actsOn()
                                .within(humidity.low(), humidity.value(), humidity.high(), Coverage.NINETY))
                        + " %RH. ")
                .collect(Collectors.joining());
        return others.isEmpty() ? "Rules act on the best value." : others + "The other rules act on the best value.";
    }

    /** "41 % (30 to 52)", kept within what a share can be. */
    private static String share(Spread spread) {
        double reach = Coverage.NINETY.deviations() * spread.deviation();
        double low = Math.max(0, spread.mean() - reach);
        double high = Math.min(1, spread.mean() + reach);
        return Words.whole(100 * spread.mean()) + " % (" + Words.whole(100 * low) + " to " + Words.whole(100 * high)
                + ")";
    }

    private static String band(Spread spread, double times, String unit) {
        double reach = Coverage.NINETY.deviations() * spread.deviation();
        return Words.oneDecimal(times * spread.mean()) + " " + unit + " ("
                + Words.oneDecimal(times * Math.max(0, spread.mean() - reach)) + " to "
                + Words.oneDecimal(times * (spread.mean() + reach)) + ")";
    }

    private static double newest(RegularSeries series) {
        for (int i = series.grid().size() - 1; i >= 0; i--) {
            if (series.known(i)) {
                return series.valueOrNaN(i);
            }
        }
        return Double.NaN;
    }
}
