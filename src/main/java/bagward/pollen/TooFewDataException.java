package bagward.pollen;

import bagward.fault.BagwardException;

/** A statistic was asked of data that cannot bear it: too few of them, all alike, or perfectly separated. */
public final class TooFewDataException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /** @param message what is there, what is needed, and what to do */
    public TooFewDataException(String message) {
        super(message, null);
    }
}
