package bagward.alarm.seasons;

import java.util.function.LongFunction;

/** The worlds in which a season is played: each decides in its own way which heads mould. */
enum MouldWorld {
    /** {@link DoseMould}. */
    DOSE(DoseMould::new),
    /** {@link ChanceMould}. */
    CHANCE(ChanceMould::new);

    private final LongFunction<HiddenMould> making;

    MouldWorld(LongFunction<HiddenMould> making) {
        this.making = making;
    }

    /** The outcome of a season. */
    HiddenMould mould(long seed) {
        return making.apply(seed);
    }
}
