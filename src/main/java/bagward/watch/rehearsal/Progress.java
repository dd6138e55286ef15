package bagward.watch.rehearsal;

/** Follows a rehearsal; called by the threads that sweep, and must not block. */
@FunctionalInterface
public interface Progress {
    /**
     * So much is done.
     *
     * @param share of the whole, 0 to 1
     * @return whether to go on; false ends the rehearsal without a result
     */
    boolean done(double share);
}
