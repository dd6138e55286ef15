package bagward.site;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.climate.ClearSky;
import bagward.climate.Climate;
import bagward.climate.Light;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.pollen.BlockBootstrap;
import bagward.pollen.HouseDay;
import bagward.pollen.HouseSeason;
import bagward.pollen.PollenEntry;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.pollen.ScorePoint;
import bagward.pollen.Scores;
import bagward.pollen.TakenScore;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.watch.PollenWatch;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

/** Pollen of the invented station: 25 scored days in the first house, none in the second, which has no light sensor yet. */
final class SamplePollen implements PollenWatch {
    private static final BlockBootstrap QUICK = new BlockBootstrap(149, 0.95, 1);
    private static final int DAYS = 26;
    private static final double GLASS = 0.6;

    private final Clock clock;
    private final Supplier<bagward.bag.Register> register;
    private final List<PollenEntry> journal = new ArrayList<>();
    private final List<HouseDay> days = new ArrayList<>();

    SamplePollen(Clock clock, Supplier<bagward.bag.Register> register) {
        this.clock = clock;
        this.register = register;
        LocalDate today = clock.instant().atZone(SampleStation.ZONE).toLocalDate();
        Random random = new Random(2);
        for (int back = DAYS - 1; back >= 0; back--) {
            LocalDate day = today.minusDays(back);
            double brightness = 0.25 + 0.75 * random.nextDouble();
            days.add(day(day, brightness, back == 9 ? 32 : 19, clock.instant()));
            if (back > 0) {
                int score = (int) Math.round(
                        Math.max(0, Math.min(3, 3.6 * brightness - 0.7 + 0.7 * random.nextGaussian())));
                Instant ten = day.atTime(10, 0).atZone(SampleStation.ZONE).toInstant();
                journal.add(new PollenEntry.Scored(
                        SampleStation.ALDER, Optional.empty(), ten, "Ida", PollenScore.of(score)));
            }
        }
    }

    private static HouseDay day(LocalDate day, double brightness, double celsius, Instant now) {
        TimeGrid grid = HouseDay.grid(day, SampleStation.ZONE);
        double[] light = new double[grid.size()];
        for (int i = 0; i < light.length; i++) {
            double clear = ClearSky.global(PlaceClimates.site(SampleStation.STATION), grid.at(i))
                    .wattsPerSquareMetre();
            light[i] = grid.at(i).isBefore(now)
                    ? GLASS * brightness * Light.MICROMOLES_PER_GLOBAL_WATT * clear
                    : Double.NaN;
        }
        Climate climate = new Climate(constant(grid, celsius), constant(grid, 72), RegularSeries.of(grid, light));
        return new HouseDay(PlaceClimates.site(SampleStation.STATION), day, SampleStation.ZONE, climate, new BitSet());
    }

    private static RegularSeries constant(TimeGrid grid, double value) {
        double[] values = new double[grid.size()];
        Arrays.fill(values, value);
        return RegularSeries.of(grid, values);
    }

    /** What was entered since the start, oldest first. */
    List<PollenEntry> entered() {
        return List.copyOf(journal.subList(DAYS - 1, journal.size()));
    }

    @Override
    public synchronized List<TakenScore> scores() {
        return Scores.of(journal, register.get());
    }

    @Override
    public synchronized void enter(List<PollenEntry> entries) {
        journal.addAll(entries);
    }

    @Override
    public Optional<PollenReport> report(HouseId house, Optional<Line> line, Predictor predictor) {
        Instant now = clock.instant();
        List<HouseDay> known = house.equals(SampleStation.ALDER) ? days : List.of();
        LocalDate today = now.atZone(SampleStation.ZONE).toLocalDate();
        return Optional.of(PollenReport.of(
                now,
                PlaceClimates.site(SampleStation.STATION),
                HouseSeason.of(house, SampleStation.ZONE, known, today, SampleStation.HEAT),
                scores(),
                line,
                predictor,
                (rows, against) -> Relation.of(ScorePoint.of(rows, against), against, QUICK)));
    }

    @Override
    public Map<HouseId, PollenReport> newest() {
        return Map.of(
                SampleStation.ALDER,
                report(SampleStation.ALDER, Optional.empty(), Predictor.LIGHT_TO_SCORE)
                        .orElseThrow(),
                SampleStation.BIRCH,
                report(SampleStation.BIRCH, Optional.empty(), Predictor.LIGHT_TO_SCORE)
                        .orElseThrow());
    }
}
