package bagward.site.view;

import bagward.bag.PollenScore;
import bagward.climate.Sky;
import bagward.pollen.Chance;
import bagward.pollen.FittedRelation;
import bagward.pollen.Interval;
import bagward.pollen.PollenReport;
import bagward.pollen.RankCorrelation;
import bagward.pollen.Relation;
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
