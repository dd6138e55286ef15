package bagward.demo;

/** Told how far the history has been published. */
@FunctionalInterface
public interface DemoProgress {
    /**
     * Called often, from the thread that publishes; must return quickly.
     *
     * @param messages how many messages the broker has taken so far
     * @param share how much of the history that is, 0 to 1; 1 exactly once, at its end
     */
    void published(long messages, double share);
}
