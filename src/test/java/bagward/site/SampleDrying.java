package bagward.site;

import bagward.bag.Origin;
import bagward.board.Board;
import bagward.board.DryingView;
import bagward.board.DryingView.FungusSince;
import bagward.board.Measure;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.mould.SeedAir;
import bagward.mould.SeedStay;
import bagward.mould.Seeds;
import bagward.mould.Storage;
import bagward.mould.StorageFungus;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import bagward.watch.PlaceStay;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** An invented loft in which seed dries: dry for days, silent for half a day, damp since last evening. */
final class SampleDrying {
    static final House LOFT = House.drying(new HouseId("loft"), "Seed loft");

    /** A place from which nothing was ever heard. */
    static final House SHED = House.drying(new HouseId("shed"), "Shed");

    private static final Storage STORAGE = Seeds.storage();
    private static final Duration DAMP_FOR = Duration.ofHours(11);

    private SampleDrying() {}

    /** A board with both places. */
    static Board on(Board board) {
        return with(board, List.of(damp(board.at()), silent()));
    }

    /** A board of a station without a drying place. */
    static Board without(Board board) {
        return with(board, List.of());
    }

    private static Board with(Board board, List<DryingView> places) {
        return new Board(
                board.at(),
                board.station(),
                board.zone(),
                board.houses(),
                board.bags(),
                board.sensors(),
                board.alarms(),
                board.setAside(),
                places,
                board.newestReading());
    }

    private static DryingView damp(Instant now) {
        Instant since = now.minus(DAMP_FOR);
        List<StorageFungus> fungi = STORAGE.fungiAt(72);
        return new DryingView(
                LOFT,
                Optional.of(new Measure(19.2, 18.9, 19.5, Origin.MEASURED, now)),
                Optional.of(new Measure(72, 69, 75, Origin.MEASURED, now)),
                Optional.of(now),
                Optional.of(SeedAir.of(new Celsius(19.2), new RelativeHumidity(72), STORAGE)),
                2,
                fungi.stream()
                        .map(fungus -> new FungusSince(fungus, since, false))
                        .toList());
    }

    private static DryingView silent() {
        return new DryingView(
                SHED, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0, List.of());
    }

    /** What the air of one of the places was. */
    static Optional<PlaceStay> stay(HouseId place, Span span) {
        TimeGrid grid = TimeGrid.covering(span.from(), span.to(), Duration.ofMinutes(10));
        Climate nothing =
                new Climate(RegularSeries.unknown(grid), RegularSeries.unknown(grid), RegularSeries.unknown(grid));
        if (place.equals(SHED.id())) {
            return Optional.of(new PlaceStay(SHED, span, nothing, SeedStay.over(nothing, span, STORAGE), STORAGE));
        }
        Climate air = new Climate(
                RegularSeries.of(grid, values(grid, span, 22, 19.2)),
                RegularSeries.of(grid, values(grid, span, 45, 72)),
                RegularSeries.unknown(grid));
        return place.equals(LOFT.id())
                ? Optional.of(new PlaceStay(LOFT, span, air, SeedStay.over(air, span, STORAGE), STORAGE))
                : Optional.empty();
    }

    private static double[] values(TimeGrid grid, Span span, double dry, double damp) {
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            Duration ago = Duration.between(grid.at(i), span.to());
            boolean gap = ago.compareTo(Duration.ofHours(36)) > 0 && ago.compareTo(Duration.ofHours(48)) <= 0;
            double value = ago.compareTo(DAMP_FOR) <= 0 ? damp : dry + Math.sin(i / 20.0);
            values[i] = gap ? Double.NaN : value;
        }
        return values;
    }
}
