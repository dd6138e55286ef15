package bagward.site.page;

import bagward.board.Board;
import bagward.board.SensorView;
import bagward.climate.Finding;
import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.site.form.Entered;
import bagward.site.page.BagPage.Choice;
import bagward.site.view.Fact;
import bagward.site.view.Words;
import bagward.station.SensorDay;
import bagward.store.KeptCheck;
import bagward.units.Quantity;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One sensor: how it did this week, and its check over salts.
 *
 * @param id its unique name
 * @param name as people call it
 * @param silent whether it was not heard for too long
 * @param facts what it is and says now
 * @param days the last days, newest first
 * @param humid whether it measures humidity, so that it can be checked
 * @param salts salts to choose from, drier ones first
 * @param checks kept checks, newest first
 * @param found what a check that is not kept yet would change; empty without one
 * @param entered what was typed
 */
public record SensorPage(
        String id,
        String name,
        boolean silent,
        List<Fact> facts,
        List<Day> days,
        boolean humid,
        List<Choice> salts,
        List<Check> checks,
        List<String> found,
        Entered entered) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int SHOWN_HUMIDITY = 90;

    /**
     * A day in the table.
     *
     * @param date the day
     * @param heard share of it that readings stand for, with unit
     * @param silence the longest silence
     * @param odd what was odd, one sentence each
     * @param poor whether the day wants a look
     */
    public record Day(String date, String heard, String silence, List<String> odd, boolean poor) {}

    /**
     * A kept check.
     *
     * @param number its number
     * @param when since when it counts
     * @param by who entered it
     * @param says what was found, one sentence each
     * @param withdrawn who withdrew it and why; empty while it counts
     */
    public record Check(long number, String when, String by, List<String> says, String withdrawn) {}

    /** The page of a sensor. */
    public static SensorPage of(
            Board board,
            SensorView view,
            Instant now,
            List<SensorDay> days,
            List<KeptCheck> checks,
            Optional<SaltCheck> found,
            Entered entered) {
        SensorsPage.Row row = SensorsPage.row(board, view, now);
        return new SensorPage(
                row.id(),
                row.name(),
                view.silent(),
                facts(view, row),
                days.stream().map(SensorPage::day).toList(),
                view.sensor().quantities().contains(Quantity.HUMIDITY),
                saltChoices(),
                checks.stream().map(kept -> check(kept, board.zone())).toList(),
                found.map(check -> says(check, board.zone())).orElse(List.of()),
                entered);
    }

    private static List<Fact> facts(SensorView view, SensorsPage.Row row) {
        return List.of(
                new Fact("Name in the configuration", row.id()),
                new Fact("Stands for", row.lentTo().isEmpty() ? row.place() : "the bag of " + row.lentTo()),
                new Fact("Newest values", row.values()),
                new Fact("Heard", row.heard()),
                new Fact("Expected every", Words.span(view.sensor().expectedEvery())));
    }

    private static Day day(SensorDay day) {
        List<String> odd = new ArrayList<>();
        day.findings().stream().map(SensorPage::odd).distinct().forEach(odd::add);
        if (day.capped() > 0) {
            odd.add(Words.count(day.capped(), "reading", "readings") + " above 100 %RH, kept as 100");
        }
        if (day.clipped() > 0) {
            odd.add(Words.count(day.clipped(), "reading", "readings") + " at the top of the range");
        }
        return new Day(
                DAY.format(day.date()),
                Words.whole(Math.floor(100 * day.heard())) + " %",
                Words.span(day.longestSilence()),
                odd,
                day.heard() < 0.9 || !odd.isEmpty());
    }

    private static String odd(Finding finding) {
        String what = finding.series().quantity().word();
        String unit = finding.series().quantity().unitSymbol();
        String amount = Words.oneDecimal(finding.amount()) + " " + unit;
        return switch (finding.oddity()) {
            case SUSPECT_VALUE -> what + " of " + amount + ", hardly true in a house";
            case STEP -> what + " jumped";
            case FAST_CHANGE -> what + " changed by " + amount + " within hours";
            case NO_CHANGE -> what + " hardly changed for half a day or more";
            case STUCK_WET ->
                "humidity stayed at 100 %RH while the air warmed by " + Words.oneDecimal(finding.amount())
                        + " K: water on the sensor, or in it";
        };
    }

    private static List<Choice> saltChoices() {
        return Arrays.stream(SaturatedSalt.values())
                .map(salt -> new Choice(salt.name().toLowerCase(Locale.ROOT).replace('_', '-'), salt.word()))
                .toList();
    }

    private static Check check(KeptCheck kept, ZoneId zone) {
        String withdrawn = kept.withdrawn()
                .map(w -> "withdrawn by " + w.by() + " on " + Words.dayAndClock(w.recordedAt(), zone) + ": " + w.why())
                .orElse("");
        String when = Words.dayAndClock(kept.check().checkedAt(), zone);
        return new Check(kept.id(), when, kept.by(), says(kept.check(), zone), withdrawn);
    }

    private static List<String> says(SaltCheck check, ZoneId zone) {
        double corrected =
                check.correction().gain() * SHOWN_HUMIDITY + check.correction().offset();
        return List.of(
                says(check.low()),
                says(check.high()),
                "From " + Words.dayAndClock(check.checkedAt(), zone) + " on a reading of " + SHOWN_HUMIDITY
                        + " %RH counts as " + Words.oneDecimal(Math.min(100, corrected)) + " %RH.");
    }

    private static String says(SaltCheck.Point point) {
        String error = Math.abs(point.error()) < 0.05
                ? "it is right"
                : Words.oneDecimal(Math.abs(point.error())) + " %RH too " + (point.error() > 0 ? "high" : "low");
        return "Over " + point.salt().word() + " at "
                + Words.oneDecimal(point.solution().degrees()) + " °C the air has "
                + Words.oneDecimal(point.truth()) + " %RH; the sensor read " + Words.oneDecimal(point.read())
                + " %RH: " + error + ".";
    }
}
