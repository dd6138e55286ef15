package bagward.collector.sparkplug;

import java.util.OptionalLong;

/**
 * Counts messages that were missed, by the sequence numbers of an edge node, which go from 0 to 255 and round again. More
 * than 235 in a row look like a few that came again, so the count says "at least".
 */
final class Sequence {
    private static final long ROUND = 256;
    /** A broker that sends again what was in flight goes back by no more. */
    private static final long AGAIN = 20;

    private OptionalLong last = OptionalLong.empty();
    private long missed;

    /** Starts anew with a birth, at whatever number it has: the standard says both 0 and 0 to 255. */
    void restart(OptionalLong number) {
        last = number;
    }

    /** Takes the number of the next message; returns whether some before it were missed. */
    boolean next(OptionalLong number) {
        if (number.isEmpty()) {
            return false;
        }
        long ahead = last.isEmpty() ? 0 : Math.floorMod(number.getAsLong() - last.getAsLong() - 1, ROUND);
        if (ahead >= ROUND - AGAIN) {
            return false;
        }
        last = number;
        missed += ahead;
        return ahead > 0;
    }

    long missed() {
        return missed;
    }
}
