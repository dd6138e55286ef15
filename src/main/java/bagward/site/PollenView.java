package bagward.site;

import bagward.board.Board;
import bagward.pollen.DayOutlook;
import bagward.pollen.FittedRelation;
import bagward.pollen.OutlookScore;
import bagward.pollen.OutlookWords;
import bagward.pollen.PollenDay;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.pollen.ScorePoint;
import bagward.pollen.ScoreRow;
import bagward.pollen.TakenScore;
import bagward.site.chart.PollenDayChart;
import bagward.site.chart.PollenDays;
import bagward.site.chart.PollenScatter;
import bagward.site.page.PollenPage;
import bagward.site.page.PollenPage.DayRow;
import bagward.site.page.PollenPage.Recent;
import bagward.site.page.PollenPage.SaidRow;
import bagward.site.view.Fact;
import bagward.site.view.PollenWords;
import bagward.site.view.Words;
import bagward.station.HouseId;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Turns a report into the parts of the pollen page. */
final class PollenView {
    private static final double WIDE = 760;
    private static final double NARROW = 360;
    private static final int DAYS_WIDE = 45;
    private static final int DAYS_NARROW = 21;
    private static final int NEWEST = 8;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private final PollenReport report;
    private final Relation light;

    /** @param light relation of light to scores, which the outlook rests on */
    PollenView(PollenReport report, Relation light) {
        this.report = report;
        this.light = light;
    }

    PollenPage.Today today() {
        Optional<DayOutlook> outlook = report.today();
        return new PollenPage.Today(
                OutlookWords.inFull(report),
                outlook.isPresent() ? OutlookWords.bestHours(report) : "",
                PollenWords.basis(report, light),
                todayFacts(),
                outlook.map(o -> PollenDayChart.draw(report, o, WIDE)),
                outlook.map(o -> PollenDayChart.draw(report, o, NARROW)));
    }

    private List<Fact> todayFacts() {
        List<Fact> facts = new ArrayList<>();
        report.season()
                .find(report.now().atZone(zone()).toLocalDate())
                .ifPresent(today -> facts.add(new Fact(
                        "Light since sunrise",
                        moles(
                                today.lightUntil(report.now()).moles(),
                                today.lightUntil(report.now()).complete()))));
        report.today()
                .map(DayOutlook::indexSoFar)
                .filter(OptionalDouble::isPresent)
                .ifPresent(index -> facts.add(
                        new Fact("Sky so far", Words.whole(100 * index.getAsDouble()) + " % of a clear sky")));
        var glass = report.season().transmission();
        facts.add(new Fact(
                "Light that the glass lets through",
                Words.whole(100 * glass.share()) + " %, "
                        + (glass.learnt() ? "learnt from " + glass.days() + " days" : "assumed")));
        report.days().stream()
                .filter(d ->
                        d.day().equals(report.now().atZone(zone()).toLocalDate().minusDays(1)))
                .findFirst()
                .ifPresent(before -> facts.add(new Fact("Yesterday", light(before) + ", " + highest(before))));
        return facts;
    }

    PollenPage.Days days() {
        List<DayRow> rows =
                new ArrayList<>(report.days().stream().map(this::row).toList());
        Collections.reverse(rows);
        long scored = report.rows().stream().map(ScoreRow::day).distinct().count();
        long hot = report.days().stream().filter(PollenDay::spoilsNextMorning).count();
        String sentence = Words.count(report.days().size(), "day", "days") + " of light, "
                + Words.count(scored, "of them scored", "of them scored") + "; "
                + Words.count(hot, "day", "days") + " so hot that the next morning may be spoilt.";
        return new PollenPage.Days(
                sentence, PollenDays.draw(report, DAYS_WIDE, WIDE), PollenDays.draw(report, DAYS_NARROW, NARROW), rows);
    }

    private DayRow row(PollenDay day) {
        String scores = report.rows().stream()
                .filter(r -> r.day().equals(day.day()))
                .map(r -> Integer.toString(r.score().number()))
                .collect(Collectors.joining(" "));
        return new DayRow(
                DAY.format(day.day()),
                light(day),
                PollenWords.sky(day.sky()),
                number(day.morningHumidity(), " %RH", 0),
                number(day.morningDeficit(), " kPa", 2),
                highest(day),
                scores.isEmpty() ? "not scored" : scores);
    }

    private static String light(PollenDay day) {
        return day.light().daylight().known().isZero()
                ? "no light data"
                : moles(day.light().moles(), day.light().complete());
    }

    private static String moles(double moles, boolean complete) {
        return (complete ? "" : "at least ") + Words.oneDecimal(moles) + " mol m⁻²";
    }

    private static String highest(PollenDay day) {
        String highest = number(day.highestTemperature(), " °C", 1);
        return day.spoilsNextMorning() ? highest + ", hot: next morning may be spoilt" : highest;
    }

    private static String number(OptionalDouble value, String unit, int decimals) {
        return value.isEmpty()
                ? "no data"
                : String.format(Locale.ROOT, "%." + decimals + "f", value.getAsDouble())
                                .replace('-', '−')
                        + unit;
    }

    PollenPage.Together together() {
        Predictor predictor = report.relation().predictor();
        if (report.relation() instanceof FittedRelation fitted) {
            List<ScorePoint> points = ScorePoint.of(report.rows(), predictor);
            List<Fact> facts = List.of(
                    new Fact("Days, scores", fitted.days() + " days, " + fitted.scores() + " scores"),
                    new Fact("Odds of a higher score", PollenWords.odds(fitted)),
                    new Fact("Rank correlation of days", PollenWords.rank(fitted)),
                    new Fact(
                            "Method",
                            "proportional-odds regression, each day at one weight; intervals from resampled runs of days"));
            return new PollenPage.Together(
                    predictor.words(),
                    predictor.unit(),
                    PollenWords.relation(fitted),
                    facts,
                    Optional.of(PollenScatter.draw(fitted, points, WIDE)),
                    Optional.of(PollenScatter.draw(fitted, points, NARROW)));
        }
        String missing = report.relation() instanceof Relation.NotYet notYet ? notYet.missing() : "";
        String days = Words.count(report.relation().days(), "day is", "days are");
        return new PollenPage.Together(
                predictor.words(),
                predictor.unit(),
                "Nothing is said yet: " + missing + ". So far " + days + " scored with this wholly known.",
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    PollenPage.Past past() {
        if (report.past().score().isEmpty()) {
            return new PollenPage.Past(
                    "No outlook can be judged yet: none of the scored days has its light.", List.of(), List.of());
        }
        OutlookScore score = report.past().score().get();
        String skill = Double.isNaN(score.skill()) ? "not defined" : PollenWords.number(score.skill());
        List<Fact> facts = List.of(
                new Fact(
                        "Brier score",
                        PollenWords.number(score.brier()) + " (0 perfect; " + PollenWords.number(score.uncertainty())
                                + " by always saying the average)"),
                new Fact("Saved of that error", skill + " (1 all, 0 none, below 0 worse than the average)"),
                new Fact(
                        "Reliability, resolution",
                        PollenWords.number(score.reliability()) + ", " + PollenWords.number(score.resolution())));
        List<SaidRow> rows = score.bins().stream()
                .map(b -> new SaidRow(
                        Words.whole(100 * b.said()) + " %",
                        Words.whole(100 * b.came()) + " %",
                        Integer.toString(b.count())))
                .toList();
        String sentence =
                Words.count(score.outlooks(), "outlook", "outlooks") + " as they stood two hours before each score, "
                        + report.past().learnt() + " of them learnt from the days before, the others prior.";
        return new PollenPage.Past(sentence, facts, rows);
    }

    List<Recent> recent() {
        List<TakenScore> scores =
                new ArrayList<>(report.rows().stream().map(ScoreRow::score).toList());
        Collections.reverse(scores);
        return scores.stream().limit(NEWEST).map(this::recent).toList();
    }

    private Recent recent(TakenScore score) {
        String line = score.line().map(l -> l.name()).orElse("");
        return new Recent(
                Words.dayAndClock(score.at(), zone()),
                PollenWords.score(score.score())
                        + (line.isEmpty() ? "" : ", " + line)
                        + (score.withPollination() ? ", with a pollination" : ""),
                score.by(),
                score.at().toString(),
                line,
                !score.withPollination());
    }

    private ZoneId zone() {
        return report.season().zone();
    }

    /** One line a house, for the wall and the front page. */
    static List<Fact> brief(Board board, Map<HouseId, PollenReport> reports) {
        return board.houses().stream()
                .filter(h -> reports.containsKey(h.house().id()))
                .map(h -> new Fact(
                        h.house().name(),
                        Optional.ofNullable(reports.get(h.house().id()))
                                .map(OutlookWords::inShort)
                                .orElse("")))
                .toList();
    }
}
