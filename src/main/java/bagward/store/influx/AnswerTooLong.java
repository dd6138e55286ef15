package bagward.store.influx;

import java.io.IOException;

/** The answer was longer than is taken. */
final class AnswerTooLong extends IOException {
    private static final long serialVersionUID = 1L;

    AnswerTooLong(long longest) {
        super("more than " + longest + " bytes in one answer");
    }
}
