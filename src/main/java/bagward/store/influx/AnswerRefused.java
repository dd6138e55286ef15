package bagward.store.influx;

import java.io.IOException;

/** The server answered, and the answer is not what was asked for. */
final class AnswerRefused extends IOException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String said;

    /**
     * @param status HTTP status of the answer
     * @param said what the server said, cut short
     */
    AnswerRefused(int status, String said) {
        super("HTTP " + status + ": " + said);
        this.status = status;
        this.said = said;
    }

    int status() {
        return status;
    }

    String said() {
        return said;
    }
}
