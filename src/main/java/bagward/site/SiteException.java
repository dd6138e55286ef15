package bagward.site;

import bagward.fault.BagwardException;

/** The pages cannot be served. */
public final class SiteException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /**
     * @param message place, value, rule and remedy
     * @param cause what lies beneath
     */
    public SiteException(String message, Throwable cause) {
        super(message, cause);
    }
}
