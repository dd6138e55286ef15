package bagward.climate;

import java.util.EnumSet;
import java.util.Set;

/** Something to know about a stored reading; none but {@link #CLOCK_WRONG} makes it unusable. */
public enum ReadingFlag {
    /** A humidity of 100 to 104 %RH was stored as 100. */
    HUMIDITY_CAPPED(1),
    /** The sensor was at the top of its range: the true value is at least the stored one. */
    CLIPPED(2),
    /** The message had no time of its own: the time of arrival was taken. */
    TIME_OF_ARRIVAL(4),
    /** The station's clock was wrong when it came, so it was not measured at its time: kept, and left out of everything. */
    CLOCK_WRONG(8);

    private final int bit;

    ReadingFlag(int bit) {
        this.bit = bit;
    }

    /** The flags as bits, for storage. */
    public static int toBits(Set<ReadingFlag> flags) {
        int bits = 0;
        for (ReadingFlag flag : flags) {
            bits |= flag.bit;
        }
        return bits;
    }

    /** The flags of stored bits; bits of unknown flags are ignored. */
    public static Set<ReadingFlag> ofBits(int bits) {
        EnumSet<ReadingFlag> flags = EnumSet.noneOf(ReadingFlag.class);
        for (ReadingFlag flag : values()) {
            if ((bits & flag.bit) != 0) {
                flags.add(flag);
            }
        }
        return flags;
    }
}
