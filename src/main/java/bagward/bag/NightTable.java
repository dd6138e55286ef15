package bagward.bag;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.time.ZonedDateTime;

/**
 * One quantity of a house, night by night, hour by hour at the same local time. Night 0 is the one to come, of which only
 * hour 0, the hour before the outlook is made, can be known; hour h is the h-th hour after.
 *
 * @param values mean of each hour, [night][hour], NaN if less than half of it is known
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the outlook; compared by no one
record NightTable(double[][] values) {

    /**
     * Lays out a series.
     *
     * @param series readings on any step that divides an hour
     * @param issue when the outlook is made, a full local hour; nothing from it on is read
     * @param hours hours of the night to come
     * @param nights how many past nights to look back
     */
    static NightTable of(RegularSeries series, ZonedDateTime issue, int hours, int nights) {
        double[] all = series.toArray();
        double[][] values = new double[nights + 1][hours + 1];
        for (int night = 0; night <= nights; night++) {
            for (int hour = 0; hour <= hours; hour++) {
                Instant from = issue.plusHours(hour - 1L).minusDays(night).toInstant();
                boolean past = from.isBefore(issue.toInstant());
                values[night][hour] = past ? mean(all, series.grid(), from) : Double.NaN;
            }
        }
        return new NightTable(values);
    }

    private static double mean(double[] all, TimeGrid grid, Instant from) {
        int first = grid.indexOf(from);
        int cells = (int) (3600 / grid.step().toSeconds());
        double sum = 0;
        int known = 0;
        for (int i = Math.max(0, first); i < Math.min(all.length, first + cells); i++) {
            if (!Double.isNaN(all[i])) {
                sum += all[i];
                known++;
            }
        }
        return known * 2 >= cells ? sum / known : Double.NaN;
    }

    int nights() {
        return values.length - 1;
    }

    int hours() {
        return values[0].length - 1;
    }

    /** Of the last so many nights, how many have at least three quarters of their hours and the hour before. */
    int usable(int lastNights) {
        int usable = 0;
        for (int night = 1; night <= Math.min(lastNights, nights()); night++) {
            int known = 0;
            for (int hour = 1; hour <= hours(); hour++) {
                known += Double.isNaN(values[night][hour]) ? 0 : 1;
            }
            usable += known * 4 >= hours() * 3 && !Double.isNaN(values[night][0]) ? 1 : 0;
        }
        return usable;
    }
}
