package bagward.bag;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Short name of a crop.
 *
 * @param value lower-case letters, digits and '-', starting with a letter or digit, at most 32
 */
public record CropId(String value) implements Comparable<CropId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,31}");

    /** Refuses names that would not survive an address. */
    public CropId {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException(
                    "crop '" + value + "' is not allowed: lower-case letters, digits and '-', at most 32");
        }
    }

    @Override
    public int compareTo(CropId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
