package bagward.pollen;

import bagward.bag.Line;
import bagward.climate.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * All that is known of the pollen of a house.
 *
 * @param now when it was made
 * @param site where the house stands
 * @param season days of the house and its transmission
 * @param days what of each day bears on pollen
 * @param line the line whose scores were taken; empty for all
 * @param rows scores joined to their days
 * @param relation of the asked predictor to the scores
 * @param usualTime local time at which scores are usually taken
 * @param today the outlook of the running day, of the coming one once the sun is down; empty if light is missing
 * @param past how past outlooks did
 */
public record PollenReport(
        Instant now,
        Site site,
        HouseSeason season,
        List<PollenDay> days,
        Optional<Line> line,
        List<ScoreRow> rows,
        Relation relation,
        LocalTime usualTime,
        Optional<DayOutlook> today,
        PastOutlooks past) {
    /** Time of scoring as long as none was ever taken. A choice of ours. */
    private static final LocalTime TEN = LocalTime.of(10, 0);

    /** Copies the lists. */
    public PollenReport {
        days = List.copyOf(days);
        rows = List.copyOf(rows);
    }

    /**
     * The report of a house.
     *
     * @param scores of any house, in any order
     * @param relations gives the relation of rows to a predictor; may remember what it gave before
     */
    public static PollenReport of(
            Instant now,
            Site site,
            HouseSeason season,
            List<TakenScore> scores,
            Optional<Line> line,
            Predictor predictor,
            Relations relations) {
        List<TakenScore> wanted = scores.stream()
                .filter(score -> !score.at().isAfter(now))
                .filter(score -> line.isEmpty() || score.line().equals(line))
                .toList();
        List<ScoreRow> rows = ScoreRow.join(wanted, season);
        LocalTime usual = usualTime(rows, season);
        Relation light = relations.of(rows, Predictor.LIGHT_TO_SCORE);
        ChanceModel model = light instanceof FittedRelation fitted ? fitted : PriorChance.USUAL;
        HouseDay day = day(now, site, season);
        Instant usualToday = day.day().atTime(usual).atZone(season.zone()).toInstant();
        return new PollenReport(
                now,
                site,
                season,
                season.summaries(),
                line,
                rows,
                relations.of(rows, predictor),
                usual,
                DayOutlook.of(day, season.transmission(), season.heat(), model, now, usualToday),
                PastOutlooks.of(rows, season));
    }

    /** Gives relations. */
    @FunctionalInterface
    public interface Relations {
        /** The relation of a predictor to the scores of rows. */
        Relation of(List<ScoreRow> rows, Predictor predictor);
    }

    /** The running day, or the coming one once the sun is down. */
    private static HouseDay day(Instant now, Site site, HouseSeason season) {
        LocalDate today = now.atZone(season.zone()).toLocalDate();
        HouseDay running = season.find(today).orElseGet(() -> HouseDay.unknown(site, today, season.zone()));
        boolean over = !running.daylight().length().isZero()
                && !now.isBefore(running.daylight().to());
        return over ? HouseDay.unknown(site, today.plusDays(1), season.zone()) : running;
    }

    /** The middle of the times of day of all scores. */
    private static LocalTime usualTime(List<ScoreRow> rows, HouseSeason season) {
        List<LocalTime> times = rows.stream()
                .map(row -> row.score().at().atZone(season.zone()).toLocalTime())
                .sorted()
                .toList();
        return times.isEmpty() ? TEN : times.get((times.size() - 1) / 2);
    }

    /** The chance that the outlook for a time rests on: learnt or prior. */
    public Chance.Basis basis() {
        return today.map(outlook -> outlook.headline().ifSo().basis()).orElse(Chance.Basis.PRIOR);
    }
}
