package bagward.bag;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Short name of a bag material.
 *
 * @param value lower-case letters, digits and '-', starting with a letter or digit, at most 32
 */
public record MaterialId(String value) implements Comparable<MaterialId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,31}");

    /** Refuses names that would not survive an address. */
    public MaterialId {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException("material name '" + value + "' is not allowed: " + FORM.pattern());
        }
    }

    @Override
    public int compareTo(MaterialId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
