package bagward.site;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.Seeds;
import bagward.watch.LotBook;
import java.time.Clock;
import java.util.Arrays;

/** A book of seed lots of the invented station, in whose houses each night is damp and each day dry. */
final class SampleLots {
    private SampleLots() {}

    static LotBook book(SampleWatch watch, Clock clock) {
        return new LotBook(watch, (house, bay, grid) -> air(grid), Seeds.surfaces(), Seeds.storage(), clock);
    }

    private static Climate air(TimeGrid grid) {
        double[] celsius = new double[grid.size()];
        double[] percent = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            boolean night = Math.floorMod(grid.at(i).getEpochSecond(), 86_400L) < 6 * 3600;
            celsius[i] = night ? 16 : 21;
            percent[i] = night ? 88 : 45;
        }
        double[] dark = new double[grid.size()];
        Arrays.fill(dark, 0);
        return new Climate(
                RegularSeries.of(grid, celsius), RegularSeries.of(grid, percent), RegularSeries.of(grid, dark));
    }
}
