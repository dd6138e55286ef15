package bagward.alarm.seasons;

/** The worlds in which a season is played: each decides in its own way which heads mould. */
enum MouldWorld {
    /** {@link DoseMould}. */
    DOSE,
    /** {@link ChanceMould}. */
    CHANCE;

    /** The outcome of a season. */
    HiddenMould mould(long seed) {
        return switch (this) {
            case DOSE -> new DoseMould(seed);
            case CHANCE -> new ChanceMould(seed);
        };
    }
}
