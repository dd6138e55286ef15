package bagward.mould;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.units.SeedMoisture;
import java.util.Arrays;
import java.util.Optional;

/**
 * The moisture at which seed would come to rest, by the air of each cell: where the seed is heading, not what it holds.
 * In % of the moist seed, estimated; gaps where there is no climate, or nothing can be said.
 *
 * @param atLeast not below this
 * @param middle best value, only where the equation holds
 * @param atMost not above this
 */
public record MoistureCourse(RegularSeries atLeast, RegularSeries middle, RegularSeries atMost) {
    /** The course of seed in a climate. */
    public static MoistureCourse of(Climate air, OilShare oil) {
        TimeGrid grid = air.grid();
        double[] least = gaps(grid);
        double[] middle = gaps(grid);
        double[] most = gaps(grid);
        for (int i = 0; i < grid.size(); i++) {
            if (air.temperature().known(i) && air.humidity().known(i)) {
                MoistureRange range = EquilibriumMoisture.range(
                        air.temperature().valueOrNaN(i), air.humidity().valueOrNaN(i), oil);
                least[i] = percent(range.atLeast());
                middle[i] = percent(range.middle());
                most[i] = percent(range.atMost());
            }
        }
        return new MoistureCourse(
                RegularSeries.of(grid, least), RegularSeries.of(grid, middle), RegularSeries.of(grid, most));
    }

    private static double[] gaps(TimeGrid grid) {
        double[] values = new double[grid.size()];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    private static double percent(Optional<SeedMoisture> moisture) {
        return moisture.map(SeedMoisture::percent).orElse(Double.NaN);
    }
}
