package bagward.bag;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Code on the tag of a head; it stays with the head to the seed lot.
 *
 * @param value upper-case letters, digits and '-', starting with a letter or digit, at most 24
 */
public record TagCode(String value) implements Comparable<TagCode> {
    private static final Pattern FORM = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,23}");

    /** Refuses codes that cannot be printed, scanned and typed alike. */
    public TagCode {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException(
                    "tag code '" + value
                            + "' is not allowed: upper-case letters, digits and '-', starting with a letter or digit, at most 24");
        }
    }

    @Override
    public int compareTo(TagCode other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
