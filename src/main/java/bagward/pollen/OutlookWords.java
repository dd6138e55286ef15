package bagward.pollen;

import bagward.climate.Span;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The outlook of a day in words; times are those of the house. */
public final class OutlookWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private OutlookWords() {}

    /** "72 % (95 % interval 50 to 88)". */
    static String chance(Chance chance) {
        return percent(chance.probability()) + " % ("
                + percent(chance.interval().level())
                + " % interval " + percent(chance.interval().low()) + " to "
                + percent(chance.interval().high()) + ")";
    }

    /** A share in per cent; what would be rounded to none or all is neither. */
    private static String percent(double share) {
        long percent = Math.round(100 * share);
        if (percent <= 0) {
            return "under 1";
        }
        return percent >= 100 ? "over 99" : Long.toString(percent);
    }

    /** The outlook in a sentence or two. */
    public static String inFull(PollenReport report) {
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
        return (outlook.day().equals(today) ? "At " : "Tomorrow at ")
                + CLOCK.format(point.at().atZone(zone));
    }

    /** The outlook in a few words: "31 to 72 % at 10:00, best 09:00 to 12:00 (prior)". */
    public static String inShort(PollenReport report) {
        return report.today()
                .map(outlook -> {
                    OutlookPoint point = outlook.headline();
                    double so = point.ifSo().probability();
                    double clear = point.over() ? so : point.ifClear().probability();
                    return range(so, clear) + " % " + when(report, outlook).toLowerCase(Locale.ENGLISH)
                            + outlook.bestHours()
                                    .map(best -> ", best " + hours(best, report))
                                    .orElse(", no good hours")
                            + (report.basis() == Chance.Basis.PRIOR ? " (prior)" : "");
                })
                .orElse("no outlook, light is missing");
    }

    /** "31 to 72", or one number if people would read the same twice. */
    static String range(double so, double clear) {
        String from = percent(so);
        String to = percent(clear);
        return from.equals(to) ? from : from + " to " + to;
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
        return CLOCK.format(best.from().atZone(zone)) + " to "
                + CLOCK.format(best.to().atZone(zone));
    }
}
