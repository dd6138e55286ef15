package bagward.climate;

import java.time.Instant;
import java.util.List;

/** Finds places in lists of readings that are sorted by time. */
public final class ByTime {
    private ByTime() {}

    /**
     * The place of the first reading at or after an instant; the size of the list if there is none.
     *
     * @param sorted readings sorted by time, fast at access by place
     */
    public static int firstFrom(List<Reading> sorted, Instant instant) {
        int low = 0;
        int high = sorted.size();
        // Readings mostly come in the order of their times: then the place is the end.
        if (high > 0 && sorted.get(high - 1).measuredAt().isBefore(instant)) {
            return high;
        }
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted.get(middle).measuredAt().isBefore(instant)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
