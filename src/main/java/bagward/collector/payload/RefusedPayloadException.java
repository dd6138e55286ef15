package bagward.collector.payload;

import bagward.fault.BagwardException;
import org.jspecify.annotations.Nullable;

/** A payload, or one value of it, cannot be used; the message says why. Becomes a line in the quarantine. */
final class RefusedPayloadException extends BagwardException {
    private static final long serialVersionUID = 1L;

    RefusedPayloadException(String reason) {
        this(reason, null);
    }

    RefusedPayloadException(String reason, @Nullable Throwable cause) {
        super(reason, cause);
    }
}
