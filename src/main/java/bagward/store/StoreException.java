package bagward.store;

import bagward.fault.BagwardException;

/** The store could not do what was asked; nothing of it was done. */
public final class StoreException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /**
     * @param message what was asked, and what helps
     * @param cause the error of the database
     */
    public StoreException(String message, Throwable cause) {
        super(message, cause);
    }

    /** @param message what was asked, why it was refused, and what helps */
    public StoreException(String message) {
        super(message, null);
    }
}
