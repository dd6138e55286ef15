package bagward.collector.sparkplug;

import bagward.fault.BagwardException;
import org.jspecify.annotations.Nullable;

/** A payload, or one metric of it, cannot be used; the message says why. */
public final class SparkplugException extends BagwardException {
    private static final long serialVersionUID = 1L;

    SparkplugException(String reason) {
        this(reason, null);
    }

    SparkplugException(String reason, @Nullable Throwable cause) {
        super(reason, cause);
    }
}
