package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Several sensors of one place as one series.
 *
 * <p>A cell is the median of the sensors that have a value in it (the mean of the middle two of an even number). An
 * outlier is marked, not removed: with three or more sensors the median passes it by anyway. Two sensors that disagree
 * are both marked, since nothing says which one is wrong.
 *
 * @param series the medians; a gap only where no sensor has a value
 * @param outliers for each sensor, in the order given, the cells in which it lay too far from the median
 */
public record MergedSeries(RegularSeries series, List<BitSet> outliers) {
    /** Copies the bit sets. */
    public MergedSeries {
        outliers = outliers.stream().map(b -> (BitSet) b.clone()).toList();
    }

    /**
     * Merges series of one quantity.
     *
     * @param grid the cells of all of them, and of the result if there is none
     * @throws ImpossibleValueException if one lies on another grid
     */
    public static MergedSeries of(TimeGrid grid, List<RegularSeries> parts, Agreement agreement) {
        if (parts.stream().anyMatch(part -> !part.grid().equals(grid))) {
            throw new ImpossibleValueException("series on different time grids cannot be merged: resample them first");
        }
        List<BitSet> outliers =
                parts.stream().map(part -> new BitSet(grid.size())).toList();
        if (parts.size() == 1) {
            return new MergedSeries(parts.get(0), outliers);
        }
        double[] medians = new double[grid.size()];
        double[] room = new double[parts.size()];
        for (int i = 0; i < medians.length; i++) {
            medians[i] = median(parts, i, room);
            for (int sensor = 0; sensor < parts.size(); sensor++) {
                outliers.get(sensor).set(i, agreement.breaks(parts.get(sensor).valueOrNaN(i), medians[i]));
            }
        }
        return new MergedSeries(RegularSeries.of(grid, medians), outliers);
    }

    private static double median(List<RegularSeries> parts, int cell, double[] room) {
        int known = 0;
        for (RegularSeries part : parts) {
            if (part.known(cell)) {
                room[known++] = part.valueOrNaN(cell);
            }
        }
        if (known == 0) {
            return Double.NaN;
        }
        Arrays.sort(room, 0, known);
        return (room[(known - 1) / 2] + room[known / 2]) / 2;
    }
}
