package bagward.site;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.HouseId;
import bagward.watch.HouseDays;
import bagward.watch.Seasons;
import java.time.Instant;
import java.time.LocalDate;
import java.util.function.IntToDoubleFunction;

/** Two years of a made-up house: warm in summer, with ten days of every hundred unknown; the other house is new. */
final class SampleSeasons implements Seasons {
    static final Instant KEPT_SINCE = Instant.parse("2026-03-01T00:00:00Z");

    @Override
    public HouseDays of(HouseId house, LocalDate from, LocalDate to) {
        TimeGrid grid = HouseDays.grid(from, to);
        boolean known = house.equals(SampleStation.ALDER);
        return new HouseDays(
                from,
                range(
                        grid,
                        known,
                        i -> 16 - 8 * Math.cos(2 * Math.PI * from.plusDays(i).getDayOfYear() / 365) + i % 5,
                        6),
                range(grid, known, i -> 74 + i % 7, 14),
                range(
                        grid,
                        known,
                        i -> 260 - 180 * Math.cos(2 * Math.PI * from.plusDays(i).getDayOfYear() / 365),
                        75));
    }

    private static HouseDays.Range range(TimeGrid grid, boolean known, IntToDoubleFunction mean, double swing) {
        return new HouseDays.Range(
                series(grid, known, i -> mean.applyAsDouble(i) - swing),
                series(grid, known, mean),
                series(grid, known, i -> mean.applyAsDouble(i) + swing),
                covered(grid, known));
    }

    private static RegularSeries series(TimeGrid grid, boolean known, IntToDoubleFunction value) {
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = known && !gap(grid, i) ? value.applyAsDouble(i) : Double.NaN;
        }
        return RegularSeries.of(grid, values);
    }

    private static RegularSeries covered(TimeGrid grid, boolean known) {
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = !known ? 0 : gap(grid, i) ? 0.31 : 1;
        }
        return RegularSeries.of(grid, values);
    }

    private static boolean gap(TimeGrid grid, int i) {
        return grid.at(i).getEpochSecond() / 86_400 % 100 < 10;
    }

    @Override
    public Instant keptSince() {
        return KEPT_SINCE;
    }
}
