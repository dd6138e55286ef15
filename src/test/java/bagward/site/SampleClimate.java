package bagward.site;

import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Banded;
import bagward.bag.Head;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.BandLimits;
import bagward.mould.DryBreak;
import bagward.mould.MouldReport;
import bagward.mould.MouldRisk;
import bagward.mould.Organism;
import bagward.mould.WetSpells;
import bagward.mould.WetnessInfection;
import bagward.watch.BagHistory;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Made-up days: warm and dry at noon, cool and wet at night, with a gap of two hours that stays one. */
final class SampleClimate {
    private SampleClimate() {}

    static double sun(Instant at) {
        ZonedDateTime local = at.atZone(SampleStation.ZONE);
        double hour = local.getHour() + local.getMinute() / 60.0;
        return Math.max(0, Math.sin(Math.PI * (hour - 5) / 15)) * (hour > 5 && hour < 20 ? 1 : 0);
    }

    static double temperature(Instant at) {
        return 13 + 11 * sun(at.minus(Duration.ofHours(1))) + 1.2 * Math.sin(at.getEpochSecond() / 5000.0);
    }

    static double humidity(Instant at) {
        return 86 - 34 * sun(at.minus(Duration.ofHours(1))) + 3 * Math.sin(at.getEpochSecond() / 3100.0);
    }

    static List<Double> day(Instant now, java.util.function.ToDoubleFunction<Instant> of, boolean silentLately) {
        List<Double> values = new ArrayList<>();
        for (int i = 48; i > 0; i--) {
            Instant at = now.minus(Duration.ofMinutes(30L * i));
            boolean gap = (i > 20 && i < 25) || (silentLately && i < 8);
            values.add(gap ? Double.NaN : of.applyAsDouble(at));
        }
        return values;
    }

    static BagHistory history(Head head, Instant now, Duration measuredFor) {
        Bagging bagging = head.baggings().get(head.baggings().size() - 1);
        Instant end = bagging.takenOff().orElse(now);
        TimeGrid grid = TimeGrid.covering(bagging.putOn(), end, Duration.ofMinutes(1));
        RegularSeries temperature = series(grid, now, SampleClimate::temperature);
        RegularSeries humidity = series(grid, now, SampleClimate::humidity);
        RegularSeries light = series(grid, now, at -> 700 * sun(at));
        RegularSeries inTemperature = series(grid, now, at -> temperature(at) + 5 * sun(at));
        RegularSeries inHumidity = series(grid, now, at -> Math.min(99, humidity(at) + 9 - 6 * sun(at)));
        BitSet measured = new BitSet();
        BitSet film = new BitSet();
        for (int i = 0; i < grid.size(); i++) {
            measured.set(i, grid.at(i).isAfter(now.minus(measuredFor)));
            film.set(i, inHumidity.valueOrNaN(i) > 95);
        }
        BagClimate bag = new BagClimate(
                banded(inTemperature, measured, 1.4, 60), banded(inHumidity, measured, 6, 100), measured, film);
        MouldReport mould = MouldRisk.report(bag, ORGANISMS, WetSpells.USUAL_BREAK);
        return new BagHistory(head, bagging, new Climate(temperature, humidity, light), bag, mould);
    }

    private static final List<Organism> ORGANISMS = List.of(new Organism(
            "botrytis",
            "Botrytis on flowers",
            new WetnessInfection(1, 25, 34, 1, 12, DryBreak.endingFrom(4)),
            new BandLimits(1, 4, 8),
            "invented"));

    private static RegularSeries series(TimeGrid grid, Instant now, java.util.function.ToDoubleFunction<Instant> of) {
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            Instant at = grid.at(i);
            boolean gap = at.isAfter(now.minus(Duration.ofHours(14))) && at.isBefore(now.minus(Duration.ofHours(12)));
            values[i] = gap ? Double.NaN : of.applyAsDouble(at);
        }
        return RegularSeries.of(grid, values);
    }

    private static Banded banded(RegularSeries middle, BitSet measured, double half, double highest) {
        return new Banded(
                middle, map(middle, measured, half, v -> v), map(middle, measured, -half, v -> Math.min(highest, v)));
    }

    private static RegularSeries map(RegularSeries of, BitSet measured, double less, DoubleUnaryOperator cut) {
        double[] values = of.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] = cut.applyAsDouble(values[i] - (measured.get(i) ? less * 0.2 : less));
        }
        return RegularSeries.of(of.grid(), values);
    }
}
