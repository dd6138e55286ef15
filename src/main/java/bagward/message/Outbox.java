package bagward.message;

import java.util.List;

/** Where messages wait, on disk, until each of their channels has taken them over. */
public interface Outbox {
    /**
     * Puts messages; all are on disk when it returns, or none. Those whose id is there already are left out, so that it
     * can be called again whenever it is not known whether it was done.
     */
    void put(List<Message> messages);

    /** What was put so far. */
    Sent sent();
}
