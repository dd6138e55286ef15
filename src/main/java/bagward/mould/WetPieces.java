package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.util.Arrays;

/**
 * Wet time of a bag as unbroken pieces of at most a quarter of an hour, found in one pass over the cells. Everything
 * that follows works on these few pieces instead of on thousands of cells. Pieces are cut at the quarters of the hour,
 * so that the pieces up to an instant do not depend on what came after it.
 *
 * <p>Cells without temperature or humidity are unknown: they are neither wet nor dry, so they add no wet hours and can
 * never end a spell; only known dry cells can. The hysteresis keeps its state across them.
 */
final class WetPieces {
    private static final int LONGEST_SECONDS = 900;

    private final int stepSeconds;
    private final int longest;
    private final int phase;
    private int count;
    private int[] first = new int[32];
    private int[] end = new int[32];
    private int[] dryBefore = new int[32];
    private int[] unknownBefore = new int[32];
    private double[] sum = new double[32];

    private WetPieces(TimeGrid grid) {
        this.stepSeconds = Math.toIntExact(grid.step().toSeconds());
        this.longest = Math.max(1, LONGEST_SECONDS / stepSeconds);
        long cellsSince1970 = Math.floorDiv(grid.start().getEpochSecond(), stepSeconds);
        this.phase = Math.floorMod(cellsSince1970, longest);
    }

    /** All pieces of a climate under a rule at a level, oldest first. */
    static WetPieces of(BagClimate climate, WetRule rule, Level level) {
        return of(climate, rule, level, climate.grid().size());
    }

    /** The same for the cells before one. */
    static WetPieces of(BagClimate climate, WetRule rule, Level level, int end) {
        WetPieces pieces = new WetPieces(climate.grid());
        pieces.scan(climate, rule, level, end);
        return pieces;
    }

    private void scan(BagClimate climate, WetRule rule, Level level, int end) {
        RegularSeries temperature = climate.temperature().middle();
        RegularSeries middle = climate.humidity().middle();
        RegularSeries humidity = level.humidityOf(climate);
        boolean humid = false;
        int dry = 0;
        int unknown = 0;
        for (int i = 0; i < end; i++) {
            if (!temperature.known(i) || !middle.known(i)) {
                unknown++;
                continue;
            }
            double celsius = temperature.valueOrNaN(i);
            double percent = humidity.known(i) ? humidity.valueOrNaN(i) : middle.valueOrNaN(i);
            humid = percent >= (humid ? rule.offPercent() : rule.onPercent());
            boolean wet = humid || (rule.filmCounts() && level.filmWetAt(climate, i));
            if (wet && rule.temperatureCounts(celsius)) {
                add(i, celsius, dry, unknown);
                dry = 0;
                unknown = 0;
            } else {
                dry++;
            }
        }
    }

    private void add(int cell, double celsius, int dry, int unknown) {
        int last = count - 1;
        boolean goesOn = count > 0 && end[last] == cell && (cell + phase) % longest != 0;
        if (!goesOn) {
            grow();
            last = count++;
            first[last] = cell;
            dryBefore[last] = dry;
            unknownBefore[last] = unknown;
        }
        end[last] = cell + 1;
        sum[last] += celsius;
    }

    private void grow() {
        if (count == first.length) {
            int room = count * 2;
            first = Arrays.copyOf(first, room);
            end = Arrays.copyOf(end, room);
            dryBefore = Arrays.copyOf(dryBefore, room);
            unknownBefore = Arrays.copyOf(unknownBefore, room);
            sum = Arrays.copyOf(sum, room);
        }
    }

    int count() {
        return count;
    }

    int firstCell(int piece) {
        return first[piece];
    }

    int endCell(int piece) {
        return end[piece];
    }

    int cells(int piece) {
        return end[piece] - first[piece];
    }

    /** Known dry time between the piece before and this one, s. */
    long drySecondsBefore(int piece) {
        return (long) dryBefore[piece] * stepSeconds;
    }

    int unknownCellsBefore(int piece) {
        return unknownBefore[piece];
    }

    /** Whether the last cell before one was wet. */
    boolean wetBefore(int cell) {
        int piece = lastBefore(cell);
        return piece >= 0 && end[piece] >= cell;
    }

    /** The last piece that begins before a cell; −1 if there is none. */
    int lastBefore(int cell) {
        int place = Arrays.binarySearch(first, 0, count, cell);
        return (place < 0 ? -place - 1 : place) - 1;
    }

    /** Sum of the cell temperatures of a piece, °C. */
    double degreeSum(int piece) {
        return sum[piece];
    }

    /** Wet cells from one cell up to, but not with, another. */
    long cellsWithin(int from, int to) {
        long cells = 0;
        for (int piece = 0; piece < count; piece++) {
            cells += Math.max(0, Math.min(to, end[piece]) - Math.max(from, first[piece]));
        }
        return cells;
    }

    /** All wet time together, h. */
    double totalHours() {
        return hoursOf(cellsWithin(0, Integer.MAX_VALUE));
    }

    double hoursOf(long cells) {
        return cells * (double) stepSeconds / 3600;
    }
}
