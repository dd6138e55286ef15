package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class MergedSeriesTest {
    private static final double GAP = Double.NaN;
    private static final Agreement TEMPERATURE = Agreement.usual(Quantity.TEMPERATURE);

    @Test
    void of_three_the_middle_one_counts_and_the_one_apart_is_marked() {
        MergedSeries merged = merge(Days.cells(5, 20, 20), Days.cells(5, 21, 21), Days.cells(5, 21.5, 40));
        assertArrayEquals(new double[] {21, 21}, merged.series().toArray());
        assertEquals(List.of("{}", "{}", "{1}"), marks(merged));
    }

    @Test
    void of_two_that_disagree_both_are_marked() {
        MergedSeries merged = merge(Days.cells(5, 20), Days.cells(5, 26));
        assertArrayEquals(new double[] {23}, merged.series().toArray());
        assertEquals(List.of("{0}", "{0}"), marks(merged));
    }

    @Test
    void a_silent_sensor_neither_counts_nor_is_marked() {
        MergedSeries merged = merge(Days.cells(5, 20, GAP), Days.cells(5, GAP, GAP));
        assertArrayEquals(new double[] {20, GAP}, merged.series().toArray());
        assertEquals(List.of("{}", "{}"), marks(merged));
    }

    @Test
    void no_sensor_is_nothing_but_gaps() {
        TimeGrid grid = Days.cells(5, 1, 2).grid();
        assertArrayEquals(
                new double[] {GAP, GAP},
                MergedSeries.of(grid, List.of(), TEMPERATURE).series().toArray());
    }

    @Test
    void the_order_of_sensors_changes_nothing() {
        RegularSeries one = Days.cells(5, 20, 25);
        RegularSeries two = Days.cells(5, 21, 19);
        assertArrayEquals(
                merge(one, two).series().toArray(), merge(two, one).series().toArray());
    }

    @Test
    void series_on_other_grids_are_refused() {
        assertThrows(ImpossibleValueException.class, () -> merge(Days.cells(5, 20), Days.cells(10, 20)));
    }

    private static MergedSeries merge(RegularSeries... parts) {
        return MergedSeries.of(parts[0].grid(), List.of(parts), TEMPERATURE);
    }

    private static List<String> marks(MergedSeries merged) {
        return merged.outliers().stream().map(BitSet::toString).toList();
    }
}
