package bagward.watch;

import bagward.climate.Agreement;
import bagward.climate.MergedSeries;
import bagward.climate.RegularSeries;
import bagward.climate.SeriesId;
import bagward.climate.Summary;
import bagward.climate.TimeGrid;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.store.SummaryStore;
import bagward.units.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Seasons from the summaries of days. Where several sensors stand for a house, the middle one counts, as it does for the
 * climate of the house.
 */
public final class SummedSeasons implements Seasons {
    private final Station station;
    private final SummaryStore summaries;

    /** Seasons of a station from its summaries. */
    public SummedSeasons(Station station, SummaryStore summaries) {
        this.station = station;
        this.summaries = summaries;
    }

    @Override
    public Instant keptSince() {
        return summaries.keptSince();
    }

    @Override
    public HouseDays of(HouseId house, LocalDate from, LocalDate to) {
        return new HouseDays(
                from,
                range(house, Quantity.TEMPERATURE, from, to),
                range(house, Quantity.HUMIDITY, from, to),
                range(house, Quantity.LIGHT, from, to));
    }

    private HouseDays.Range range(HouseId house, Quantity quantity, LocalDate from, LocalDate to) {
        TimeGrid grid = HouseDays.grid(from, to);
        List<List<Summary>> sensors = new ArrayList<>();
        for (Sensor sensor : PlaceClimates.sensors(station, house, Optional.empty(), quantity)) {
            sensors.add(summaries.days(new SeriesId(sensor.id(), quantity), from, to));
        }
        Days days = new Days(grid, from, station.zone(), sensors, quantity);
        return new HouseDays.Range(
                days.middle(Summary::minimum),
                days.middle(Summary::mean),
                days.middle(Summary::maximum),
                days.covered());
    }

    /** The summaries of the sensors of one quantity. */
    private record Days(TimeGrid grid, LocalDate from, ZoneId zone, List<List<Summary>> sensors, Quantity quantity) {
        RegularSeries middle(ToDoubleFunction<Summary> figure) {
            List<RegularSeries> parts = sensors.stream()
                    .map(sensor -> series(sensor, figure, HouseDays.MEAN_SHARE, Double.NaN))
                    .toList();
            return MergedSeries.of(grid, parts, Agreement.usual(quantity)).series();
        }

        /** The best known sensor of each day. */
        RegularSeries covered() {
            double[] best = new double[grid.size()];
            for (List<Summary> sensor : sensors) {
                RegularSeries one = series(sensor, Summary::share, 0, 0);
                for (int i = 0; i < best.length; i++) {
                    best[i] = Math.max(best[i], one.valueOrNaN(i));
                }
            }
            return RegularSeries.of(grid, best);
        }

        private RegularSeries series(
                List<Summary> days, ToDoubleFunction<Summary> figure, double least, double otherwise) {
            double[] values = new double[grid.size()];
            Arrays.fill(values, otherwise);
            for (Summary day : days) {
                long i = ChronoUnit.DAYS.between(
                        from, day.span().from().atZone(zone).toLocalDate());
                if (i >= 0 && i < values.length && day.share() >= least) {
                    values[(int) i] = figure.applyAsDouble(day);
                }
            }
            return RegularSeries.of(grid, values);
        }
    }
}
