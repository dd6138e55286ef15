package bagward.fault;

import org.jspecify.annotations.Nullable;

/** Root of every error that Bagward raises on purpose; anything else that escapes is a defect. */
public abstract class BagwardException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String message;

    /**
     * An error with its message.
     *
     * @param message one sentence with place, value, rule and remedy
     * @param cause what lies beneath, or null
     */
    protected BagwardException(String message, @Nullable Throwable cause) {
        super(message, cause);
        this.message = message;
    }

    @Override
    public String getMessage() {
        return message;
    }
}
