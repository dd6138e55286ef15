package bagward.pollen;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What would have been said two hours before each score, from what was known then: the scores of the days before, and the
 * light up to that moment, going on as so far (clear where the morning was too young). Derived anew each time, so that a
 * score or a reading that comes late counts as if it had come in time. Only the transmission of the glass is that of today.
 *
 * @param said one for each score with wholly known light, oldest first
 * @param learnt how many of them rested on scores instead of the prior
 * @param score how good they were; empty without any
 */
public record PastOutlooks(List<Said> said, int learnt, Optional<OutlookScore> score) {
    /** How long before the score the outlook is taken. */
    public static final Duration BEFORE = Duration.ofHours(2);

    private static final int BINS = 5;

    /** Copies the list. */
    public PastOutlooks {
        said = List.copyOf(said);
    }

    /**
     * One outlook of the past.
     *
     * @param day its day
     * @param at the time of the score that it was for
     * @param probability that was said for clear or plentiful pollen
     * @param basis what it rested on
     * @param came whether it came
     */
    public record Said(LocalDate day, Instant at, double probability, Chance.Basis basis, boolean came) {}

    /** The outlooks for the scores of some rows, in the order of their times. */
    public static PastOutlooks of(List<ScoreRow> rows, HouseSeason season) {
        List<ScorePoint> points = ScorePoint.of(rows, Predictor.LIGHT_TO_SCORE);
        SortedMap<LocalDate, List<ScoreRow>> byDay =
                rows.stream().collect(Collectors.groupingBy(ScoreRow::day, TreeMap::new, Collectors.toList()));
        List<Said> said = new ArrayList<>();
        byDay.forEach((day, ofDay) -> {
            Optional<OrdinalFit> fit = Relation.estimate(
                    points.stream().filter(p -> p.day().isBefore(day)).toList());
            ofDay.forEach(row -> said(row, fit, season).ifPresent(said::add));
        });
        int learnt = (int)
                said.stream().filter(s -> s.basis() == Chance.Basis.LEARNT).count();
        return new PastOutlooks(said, learnt, said.isEmpty() ? Optional.empty() : Optional.of(score(said)));
    }

    private static Optional<Said> said(ScoreRow row, Optional<OrdinalFit> fit, HouseSeason season) {
        Instant at = row.score().at();
        return season.find(row.day()).flatMap(day -> {
            SkyCourse course = new SkyCourse(day, season.transmission(), at.minus(BEFORE));
            if (!course.soFar().complete() || day.daylight().length().isZero()) {
                return Optional.empty();
            }
            double moles = course.moles(at, course.indexSoFar().orElse(1));
            double probability = fit.map(f -> f.probabilityAtLeast(PriorChance.ENOUGH, moles))
                    .orElseGet(() -> PriorChance.USUAL.at(moles).probability());
            Chance.Basis basis = fit.isPresent() ? Chance.Basis.LEARNT : Chance.Basis.PRIOR;
            return Optional.of(
                    new Said(row.day(), at, probability, basis, row.score().enough()));
        });
    }

    private static OutlookScore score(List<Said> said) {
        double[] probabilities = said.stream().mapToDouble(Said::probability).toArray();
        boolean[] came = new boolean[said.size()];
        for (int i = 0; i < came.length; i++) {
            came[i] = said.get(i).came();
        }
        return OutlookScore.of(probabilities, came, BINS);
    }
}
