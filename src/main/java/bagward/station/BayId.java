package bagward.station;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Short name of a bay.
 *
 * @param value lower-case letters, digits and '-', starting with a letter or digit, at most 32
 */
public record BayId(String value) implements Comparable<BayId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,31}");

    /** Refuses names that would not survive a topic or an address. */
    public BayId {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException("bay name '" + value + "' is not allowed: " + FORM.pattern());
        }
    }

    @Override
    public int compareTo(BayId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
