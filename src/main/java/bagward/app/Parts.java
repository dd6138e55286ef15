package bagward.app;

import java.util.ArrayDeque;
import java.util.Deque;
import org.slf4j.LoggerFactory;

/** Parts that were started, closed in the reverse order of their start; one that fails does not keep the others open. */
final class Parts implements AutoCloseable {
    private final Deque<AutoCloseable> started = new ArrayDeque<>();

    /** Takes a part that was just started, and gives it back. */
    synchronized <T extends AutoCloseable> T add(T part) {
        started.push(part);
        return part;
    }

    @Override
    public synchronized void close() {
        while (!started.isEmpty()) {
            AutoCloseable part = started.pop();
            try {
                part.close();
            } catch (Exception e) {
                LoggerFactory.getLogger(Parts.class).warn("a part did not close cleanly", e);
            }
        }
    }
}
