package bagward.mould;

/**
 * A fungus that grows on stored seed.
 *
 * @param name its name
 * @param fromPercent lowest humidity of the air between the seeds at which it grows, %RH
 */
public record StorageFungus(String name, double fromPercent) {
    /** Whether it could grow in such air; its need of warmth is not looked at. */
    public boolean couldGrowAt(double percent) {
        return percent >= fromPercent;
    }
}
