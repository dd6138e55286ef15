package bagward.notify;

import bagward.fault.BagwardException;
import org.jspecify.annotations.Nullable;

/** The other side has not taken over. */
public final class DeliveryException extends BagwardException {
    private static final long serialVersionUID = 1L;

    private final boolean refused;

    private DeliveryException(String message, @Nullable Throwable cause, boolean refused) {
        super(message, cause);
        this.refused = refused;
    }

    /** The other side is out of reach or busy; whatever is sent to it now would fail too. */
    public static DeliveryException outOfReach(String message, @Nullable Throwable cause) {
        return new DeliveryException(message, cause, false);
    }

    /** The other side is there and refuses this one. */
    public static DeliveryException refused(String message, @Nullable Throwable cause) {
        return new DeliveryException(message, cause, true);
    }

    /** Whether this one was refused, and others may well be taken. */
    public boolean refused() {
        return refused;
    }
}
