package bagward.watch;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

/**
 * A house day by day. Cell i of each series is day i in the zone of the station, whatever its true length; days of which
 * too little is known are gaps.
 *
 * @param from the first day
 * @param temperature °C
 * @param humidity %RH
 * @param light µmol m⁻² s⁻¹
 */
public record HouseDays(LocalDate from, Range temperature, Range humidity, Range light) {
    /** A mean of a day needs this share of it. */
    public static final double MEAN_SHARE = 0.75;

    /**
     * One quantity.
     *
     * @param minimum lowest value of each day
     * @param mean mean of each day
     * @param maximum highest value of each day
     * @param covered known share of each day, 0 to 1; no gaps
     */
    public record Range(RegularSeries minimum, RegularSeries mean, RegularSeries maximum, RegularSeries covered) {
        /** Whether anything is known. */
        public boolean known() {
            return knownDays() > 0;
        }

        /** Days with a mean. */
        public int knownDays() {
            int days = 0;
            for (int i = 0; i < mean.grid().size(); i++) {
                days += mean.known(i) ? 1 : 0;
            }
            return days;
        }
    }

    /** Cells for the days [from, to). */
    public static TimeGrid grid(LocalDate from, LocalDate to) {
        int days = (int) Math.max(0, ChronoUnit.DAYS.between(from, to));
        return new TimeGrid(from.atStartOfDay(ZoneOffset.UTC).toInstant(), Duration.ofDays(1), days);
    }

    /** How many days. */
    public int size() {
        return temperature.mean().grid().size();
    }

    /** Day i. */
    public LocalDate day(int i) {
        return from.plusDays(i);
    }
}
