package bagward.site.page;

import bagward.site.chart.Chart;
import bagward.site.chart.PollenDays;
import bagward.site.chart.PollenScatter;
import bagward.site.form.Entered;
import bagward.site.page.BagPage.Choice;
import bagward.site.view.Fact;
import java.util.List;
import java.util.Optional;

/**
 * The page on pollen: score it, is there any today, how did light and scores go together.
 *
 * @param houses all houses to score in
 * @param house short name of the house that is shown
 * @param houseName its name
 * @param today the outlook
 * @param days light and scores, day by day
 * @param relation how they hang together
 * @param past how past outlooks did
 * @param recent newest scores of the house
 * @param choice what else can be asked for
 * @param entered what was entered and refused, or the fresh values
 */
public record PollenPage(
        List<Choice> houses,
        String house,
        String houseName,
        Today today,
        Days days,
        Together relation,
        Past past,
        List<Recent> recent,
        Asked choice,
        Entered entered) {
    /** Copies the lists. */
    public PollenPage {
        houses = List.copyOf(houses);
        recent = List.copyOf(recent);
    }

    /**
     * The outlook of the day.
     *
     * @param sentence the outlook in words
     * @param bestHours when to work
     * @param basis learnt or prior
     * @param facts lines about the day
     * @param wide chart for desks; empty without an outlook
     * @param narrow chart for phones
     */
    public record Today(
            String sentence,
            String bestHours,
            String basis,
            List<Fact> facts,
            Optional<Chart> wide,
            Optional<Chart> narrow) {}

    /**
     * The days.
     *
     * @param sentence the picture in words
     * @param wide for desks
     * @param narrow for phones
     * @param rows the same as a table, newest first
     */
    public record Days(String sentence, PollenDays wide, PollenDays narrow, List<DayRow> rows) {}

    /**
     * A day in words.
     *
     * @param day the day
     * @param light light sum from sunrise to sunset
     * @param sky sunny, mixed or cloudy
     * @param humidity mean of the morning
     * @param deficit mean of the morning
     * @param highest highest temperature, and what it means
     * @param scores scores of the day
     */
    public record DayRow(
            String day, String light, String sky, String humidity, String deficit, String highest, String scores) {}

    /**
     * The relation.
     *
     * @param title what the scores are set against
     * @param unit its unit
     * @param sentence the relation in words, or what is missing
     * @param facts its numbers; empty if there is none yet
     * @param wide picture for desks; empty if there is none yet
     * @param narrow picture for phones
     */
    public record Together(
            String title,
            String unit,
            String sentence,
            List<Fact> facts,
            Optional<PollenScatter> wide,
            Optional<PollenScatter> narrow) {}

    /**
     * Past outlooks.
     *
     * @param sentence how they did
     * @param facts their numbers
     * @param rows what was said against what came
     */
    public record Past(String sentence, List<Fact> facts, List<SaidRow> rows) {}

    /**
     * One line of the reliability table.
     *
     * @param said mean chance that was said
     * @param came how often clear pollen came
     * @param outlooks how many
     */
    public record SaidRow(String said, String came, String outlooks) {}

    /**
     * A score that was entered.
     *
     * @param time when it was taken
     * @param what score and line
     * @param by who took it
     * @param at the exact time, as the form that withdraws it sends it
     * @param line name of the line; empty for the house
     * @param withdrawable whether it may be withdrawn here; those of pollinations stand in the register
     */
    public record Recent(String time, String what, String by, String at, String line, boolean withdrawable) {}

    /**
     * What is shown and what else can be.
     *
     * @param line line whose scores are shown; empty for all
     * @param lines lines that were ever scored here
     * @param predictor what scores are set against
     * @param predictors what they can be set against
     */
    public record Asked(String line, List<String> lines, String predictor, List<Choice> predictors) {}
}
