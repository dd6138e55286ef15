package bagward.mould;

import bagward.bag.CropId;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;

/**
 * What a crop bears and how long it takes.
 *
 * @param id short name in files and addresses
 * @param name as people call it
 * @param heat what its flowers bear
 * @param bag how long its heads stay in the bag
 * @param ripening when its pods are ripe
 */
public record Crop(CropId id, String name, HeatLimits heat, BagTimes bag, RipeningWindow ripening) {
    /**
     * Times of a bag.
     *
     * @param dueAfter time in the bag after which it is due to come off
     * @param overdueEvery how long until it is one step more overdue
     * @param afterPollination shortest time from the last pollination to taking the bag off
     * @param afterLastFlower shortest time from the opening of the last flower to taking the bag off
     * @param source where the times come from
     */
    public record BagTimes(
            Duration dueAfter,
            Duration overdueEvery,
            Duration afterPollination,
            Duration afterLastFlower,
            String source) {}

    /**
     * Days from pollination to harvest; information only.
     *
     * @param firstDay first day of the window
     * @param lastDay last day of the window
     * @param source where the days come from
     */
    public record RipeningWindow(int firstDay, int lastDay, String source) {
        /** Refuses a window that ends before it begins. */
        public RipeningWindow {
            if (firstDay < 1 || lastDay < firstDay) {
                throw new ImpossibleValueException("a harvest window from day " + firstDay + " to " + lastDay
                        + " is impossible: it begins on day 1 or later and does not end before");
            }
        }
    }
}
