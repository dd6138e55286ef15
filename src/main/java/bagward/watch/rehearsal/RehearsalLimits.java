package bagward.watch.rehearsal;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.station.Sensor;
import java.util.List;
import java.util.Locale;

/** What a rehearsal beside the running watch may cost. */
final class RehearsalLimits {
    /** A season. Ours. */
    static final int LONGEST_DAYS = 92;

    /** Sixteen bytes each: 160 MB. Ours, for a machine with 2 GB. */
    static final long MOST_READINGS = 10_000_000;

    private RehearsalLimits() {}

    /** @throws RefusedInputException if the stretch is longer than may be looked at beside the running watch */
    static void check(RehearsedDays days, List<Sensor> sensors) {
        if (days.days() > LONGEST_DAYS + 1) {
            throw refused(days, "at most " + LONGEST_DAYS + " days are tried at once on this page");
        }
        long readings = days.readings(sensors);
        if (readings > MOST_READINGS) {
            throw refused(
                    days,
                    String.format(
                            Locale.ROOT,
                            "this needs about %.0f million readings, and at most %.0f million are held in memory here",
                            readings / 1e6,
                            MOST_READINGS / 1e6));
        }
    }

    private static RefusedInputException refused(RehearsedDays days, String rule) {
        return new RefusedInputException(List.of(new Fault(
                "first",
                Math.round(days.days()) + " days",
                rule,
                "Choose fewer days, or use the command rehearse on another machine.")));
    }
}
