package bagward.mould;

/**
 * Where the mould index of something stands; it goes on from here.
 *
 * @param index now, 0 to 6
 * @param highest the highest so far, 0 to 6
 * @param dryHours how long it has been dry without a break, h
 */
public record IndexState(double index, double highest, double dryHours) {
    /** Something new and clean. */
    public static final IndexState CLEAN = new IndexState(0, 0, 0);
}
