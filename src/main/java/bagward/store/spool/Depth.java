package bagward.store.spool;

import java.time.Instant;
import java.util.Optional;

/**
 * How much waits in a spool.
 *
 * @param items readings or messages that wait
 * @param bytes what they take on disk
 * @param limitBytes most that they may take
 * @param oldest since when the oldest of them waits
 * @param damagedBytes bytes that could not be read at the start, kept beside the spool in files that end with .damaged
 */
public record Depth(long items, long bytes, long limitBytes, Optional<Instant> oldest, long damagedBytes) {
    /** Nothing, and no room for anything. */
    public static final Depth NONE = new Depth(0, 0, 0, Optional.empty(), 0);

    private static final double PERCENT = 100;

    /** How full the spool is, %. */
    public double percent() {
        return limitBytes == 0 ? 0 : PERCENT * bytes / limitBytes;
    }
}
