package bagward.fault;

/** A value that cannot exist (NaN, infinite, outside the physical range) was refused at construction. */
public final class ImpossibleValueException extends BagwardException {
    private static final long serialVersionUID = 1L;

    /** @param message names the value, its unit and the allowed range */
    public ImpossibleValueException(String message) {
        super(message, null);
    }
}
