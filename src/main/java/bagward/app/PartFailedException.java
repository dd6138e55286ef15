package bagward.app;

import bagward.fault.BagwardException;

/** A part of the program could not start. */
final class PartFailedException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /** An error that says which part, why, and what helps. */
    PartFailedException(String message, Throwable cause) {
        super(message, cause);
    }
}
