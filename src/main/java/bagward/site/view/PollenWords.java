package bagward.site.view;

import bagward.bag.PollenScore;
import bagward.climate.Sky;
import bagward.climate.Span;
import bagward.pollen.Chance;
import bagward.pollen.DayOutlook;
import bagward.pollen.FittedRelation;
import bagward.pollen.Interval;
import bagward.pollen.OutlookPoint;
import bagward.pollen.PollenReport;
import bagward.pollen.RankCorrelation;
import bagward.pollen.Relation;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/** Pollen in words. */
public final class PollenWords {
    private PollenWords() {}

    /** "2 clear". */
    public static String score(PollenScore score) {
        return score.number() + " "
                + switch (score) {
                    case NONE -> "none";
                    case TRACE -> "a trace";
                    case CLEAR -> "clear";
                    case PLENTIFUL -> "plenty";
                };
    }

    /** "sunny", or "not known". */
    public static String sky(Optional<Sky> sky) {
        return sky.map(s -> s.name().toLowerCase(Locale.ROOT)).orElse("not known");
    }

    /** "72 % (95 % interval 50 to 88)". */
    public static String chance(Chance chance) {
        return percent(chance.probability()) + " % ("
                + Words.whole(100 * chance.interval().level())
                + " % interval " + percent(chance.interval().low()) + " to "
                + percent(chance.interval().high()) + ")";
    }

    private static String percent(double share) {
        return Words.whole(100 * share);
    }

    /** The outlook in a sentence or two. */
    public static String outlook(PollenReport report) {
        if (report.today().isEmpty()) {
            return "No outlook: light is missing since sunrise, or nothing was measured yet. Look at the flowers.";
        }
        DayOutlook outlook = report.today().get();
        OutlookPoint point = outlook.headline();
        String when = when(report, outlook);
        if (point.over()) {
            return when + ": " + chance(point.ifSo()) + " chance of clear or plentiful pollen, from the light so far.";
        }
        String darker = outlook.indexSoFar().isPresent() ? "if the sky stays as it was so far" : "if it is overcast";
        boolean begun = outlook.points().get(0).over();
        return when + ": " + chance(point.ifSo()) + " chance of clear or plentiful pollen " + darker + ", "
                + chance(point.ifClear()) + " if it is clear from " + (begun ? "now" : "sunrise") + " on.";
    }

    private static String when(PollenReport report, DayOutlook outlook) {
        ZoneId zone = report.season().zone();
        LocalDate today = report.now().atZone(zone).toLocalDate();
        OutlookPoint point = outlook.headline();
        if (point.over()) {
            return "Now";
        }
        return (outlook.day().equals(today) ? "At " : "Tomorrow at ") + Words.clock(point.at(), zone);
    }

    /** The outlook in a few words, for a wall. */
    public static String shortOutlook(PollenReport report) {
        return report.today()
                .map(outlook -> {
                    OutlookPoint point = outlook.headline();
                    String so = percent(point.ifSo().probability());
                    String range = point.over()
                            ? so
                            : so + " to " + percent(point.ifClear().probability());
                    return range + " % " + when(report, outlook).toLowerCase(Locale.ENGLISH)
                            + outlook.bestHours()
                                    .map(best -> ", best " + hours(best, report))
                                    .orElse(", no good hours")
                            + (report.basis() == Chance.Basis.PRIOR ? " (prior)" : "");
                })
                .orElse("no outlook, light is missing");
    }

    /** The best hours in a sentence. */
    public static String bestHours(PollenReport report) {
        return report.today()
                .flatMap(DayOutlook::bestHours)
                .map(best -> "Best hours: " + hours(best, report) + ".")
                .orElse("No good hours are to be expected under the darker course of the sky.");
    }

    private static String hours(Span best, PollenReport report) {
        ZoneId zone = report.season().zone();
        return Words.clock(best.from(), zone) + " to " + Words.clock(best.to(), zone);
    }

    /** What the outlook rests on. */
    public static String basis(PollenReport report, Relation light) {
        if (report.basis() == Chance.Basis.LEARNT) {
            return "Learnt from " + Words.count(light.days(), "scored day", "scored days") + " of this house.";
        }
        String missing =
                light instanceof Relation.NotYet notYet ? " To learn from this house: " + notYet.missing() + "." : "";
        return "A prior: a guess of ours that knows nothing of this house." + missing;
    }

    /** A relation in words that claim no cause. */
    public static String relation(FittedRelation relation) {
        double slope = relation.fit().coefficients().get(0);
        if (relation.uncertainSign()) {
            return "No association can be told from these days: more or less of it went with more pollen about equally often.";
        }
        return (slope > 0 ? "More of it went with more pollen" : "More of it went with less pollen")
                + ": an association, not a proof of a cause.";
    }

    /** Rank correlation with its p-value and how that was found. */
    public static String rank(FittedRelation relation) {
        RankCorrelation rank = relation.rank();
        String how = rank.method() == RankCorrelation.Method.EXACT ? "exact" : "Student's t, ties shared";
        String interval =
                relation.rankInterval().map(i -> " (" + interval(i, 1) + ")").orElse("");
        return number(rank.coefficient()) + interval + ", p " + pValue(rank.pValue()) + " (" + how
                + "; days that hang together make p too small)";
    }

    private static String pValue(double p) {
        return p < 0.001 ? "below 0.001" : String.format(Locale.ROOT, "%.3f", p);
    }

    /** The odds of a higher score for each unit of the predictor. */
    public static String odds(FittedRelation relation) {
        double slope = relation.fit().coefficients().get(0);
        Interval slopes = relation.slope();
        return "times " + number(Math.exp(slope)) + " ("
                + interval(new Interval(Math.exp(slopes.low()), Math.exp(slopes.high()), slopes.level()), 1)
                + ") for each "
                + relation.predictor().unit();
    }

    private static String interval(Interval interval, double factor) {
        return Words.whole(100 * interval.level()) + " % interval " + number(factor * interval.low()) + " to "
                + number(factor * interval.high());
    }

    /** Two decimals with a true minus sign. */
    public static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replace('-', '−');
    }
}
