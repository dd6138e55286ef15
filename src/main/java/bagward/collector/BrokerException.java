package bagward.collector;

import bagward.fault.BagwardException;
import org.jspecify.annotations.Nullable;

/** A broker could not be started or reached, or refused what was asked. */
public final class BrokerException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /**
     * @param message which broker, what failed, and what helps
     * @param cause the error beneath, or null
     */
    public BrokerException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
