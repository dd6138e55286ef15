package bagward.watch;

/**
 * What came in since the start, and what waits.
 *
 * @param stored readings that were new in the store; repeats are not counted
 * @param repeated readings that were there already with the same value
 * @param contradicted readings that were there with another value; the higher one was kept
 * @param lost messages of quality of service 0 for which there was no room
 * @param waiting readings that wait in the spool for their store
 * @param spoolPercent how full the spool is, %
 */
public record Intake(long stored, long repeated, long contradicted, long lost, long waiting, double spoolPercent) {
    /** Nothing came, nothing waits. */
    public static final Intake NONE = new Intake(0, 0, 0, 0, 0, 0);
}
