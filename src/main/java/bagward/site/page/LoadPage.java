package bagward.site.page;

import bagward.alarm.AlarmAdvice;
import bagward.alarm.AlarmLoad;
import bagward.alarm.Rule;
import bagward.board.Board;
import bagward.site.view.AlarmWords;
import bagward.site.view.Fact;
import bagward.site.view.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the alarms ask of people.
 *
 * @param days how many days are counted, today as the last of them
 * @param facts in numbers
 * @param advice what to tune; empty if nothing
 * @param perDay alarms of each day, newest first
 * @param mostFrequent the alarms that came most often
 * @param standing alarms that have stood for more than a day
 */
public record LoadPage(
        int days,
        List<Fact> facts,
        List<AlarmAdvice.Advice> advice,
        List<Day> perDay,
        List<Often> mostFrequent,
        List<Often> standing) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /**
     * A day.
     *
     * @param day its name
     * @param alarms how many were raised
     * @param bar length of its bar, 0 to 100
     */
    public record Day(String day, int alarms, int bar) {}

    /**
     * An alarm that asks much.
     *
     * @param what rule and subject
     * @param address its page
     * @param much how often, or since when
     */
    public record Often(String what, String address, String much) {}

    /** The page of a load. */
    public static LoadPage of(Board board, List<Rule> rules, AlarmLoad load, int days) {
        return new LoadPage(
                days,
                facts(load, days),
                AlarmAdvice.of(load, days, rules, subject -> AlarmWords.subject(board, subject)),
                perDay(board, load, days),
                load.mostFrequent().stream()
                        .map(count -> new Often(
                                AlarmWords.rule(rules, count.key().rule()) + ", "
                                        + AlarmWords.subject(board, count.key().subject()),
                                AlarmWords.address(count.key()),
                                Words.count(count.times(), "time", "times")))
                        .toList(),
                load.standing().stream()
                        .map(alarm -> new Often(
                                AlarmWords.rule(rules, alarm.key().rule()) + ", "
                                        + AlarmWords.subject(board, alarm.key().subject()),
                                AlarmWords.address(alarm.key()),
                                "since " + Words.dayAndClock(alarm.since(), board.zone())))
                        .toList());
    }

    private static List<Fact> facts(AlarmLoad load, int days) {
        return List.of(
                new Fact("Raised", Words.count(load.raised(), "alarm", "alarms") + " in " + days + " days"),
                new Fact(
                        "A day",
                        Words.oneDecimal((double) load.raised() / days)
                                + "; a person with other work bears three to six"),
                new Fact("Chattering", Words.count(load.chattering().size(), "alarm", "alarms")),
                new Fact("Standing over a day", Words.count(load.standing().size(), "alarm", "alarms")),
                new Fact(
                        "Time until seen, median",
                        load.timeToAcknowledge().map(Words::span).orElse("none was confirmed")));
    }

    private static List<Day> perDay(Board board, AlarmLoad load, int days) {
        LocalDate today = board.at().atZone(board.zone()).toLocalDate();
        int most = load.raisedPerDay().values().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(1);
        List<Day> list = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            LocalDate day = today.minusDays(i);
            int alarms = load.raisedPerDay().getOrDefault(day, 0);
            list.add(new Day(DAY.format(day), alarms, 100 * alarms / most));
        }
        return list;
    }
}
