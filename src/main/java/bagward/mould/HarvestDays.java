package bagward.mould;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * The days on which the pods of a head will be ripe, by the days of the crop; information only.
 *
 * @param first first day, house time
 * @param last last day
 */
public record HarvestDays(LocalDate first, LocalDate last) {
    /**
     * Counted from the day of the pollination.
     *
     * @param pollinated when it was pollinated
     * @param window days of the crop
     * @param zone zone of the house
     */
    public static HarvestDays of(Instant pollinated, Crop.RipeningWindow window, ZoneId zone) {
        LocalDate day = pollinated.atZone(zone).toLocalDate();
        return new HarvestDays(day.plusDays(window.firstDay()), day.plusDays(window.lastDay()));
    }
}
