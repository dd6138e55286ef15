package bagward.site.form;

import bagward.alarm.Rule;
import bagward.watch.rehearsal.RehearsalOrder;
import bagward.watch.rehearsal.RehearsedDays;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the form of a rehearsal. */
public final class RehearsalEntry {
    private static final int USUAL_DAYS = 14;
    private static final String USUAL_MINUTES = "10";
    private static final int LONGEST_TEXT = 100_000;

    /** How often the rules may look, minutes. */
    public static final List<String> MINUTES = List.of("1", "5", USUAL_MINUTES, "30");

    private RehearsalEntry() {}

    /** The form before anything was sent: the last days that are stored, beside the running rules. */
    public static Entered fresh(Instant newest, ZoneId zone) {
        LocalDate last = newest.atZone(zone).toLocalDate();
        return Entered.fresh(Map.of(
                "first",
                last.minusDays(USUAL_DAYS - 1L).toString(),
                "last",
                last.toString(),
                "every",
                USUAL_MINUTES,
                "beside",
                "yes"));
    }

    /**
     * What is to be tried.
     *
     * @param rules the rules that the text comes to
     * @param newest end of what is stored
     * @throws bagward.fault.RefusedInputException with every fault
     */
    public static RehearsalOrder read(Fields fields, List<Rule> rules, Instant newest, ZoneId zone) {
        Optional<LocalDate> first = fields.needed("first", RehearsalEntry::day);
        Optional<LocalDate> last = fields.needed("last", RehearsalEntry::day);
        Optional<Integer> every = fields.needed("every", RehearsalEntry::minutes);
        String text = fields.text("text", LONGEST_TEXT);
        Instant from = first.map(day -> day.atStartOfDay(zone).toInstant()).orElse(newest);
        Instant to = last.map(day -> day.plusDays(1).atStartOfDay(zone).toInstant())
                .filter(end -> end.isBefore(newest))
                .orElse(newest);
        if (first.isPresent() && last.isPresent() && !from.isBefore(to)) {
            fields.refuse("first", "nothing is stored from this day to the last one: give an earlier day");
        }
        fields.check();
        RehearsedDays days = new RehearsedDays(from, to, Duration.ofMinutes(every.orElseThrow()));
        boolean beside = fields.sent("beside").equals("yes") && !text.isBlank();
        return new RehearsalOrder(first.orElseThrow(), last.orElseThrow(), days, text, rules, beside);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException noDay) {
            throw new IllegalArgumentException(noDay);
        }
    }

    private static int minutes(String text) {
        if (!MINUTES.contains(text)) {
            throw new IllegalArgumentException(text);
        }
        return Integer.parseInt(text);
    }
}
