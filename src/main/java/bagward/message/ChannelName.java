package bagward.message;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Short name of a way to deliver a message, such as the mail address of a person.
 *
 * @param value lower-case letters, digits and '-', at most 40
 */
public record ChannelName(String value) implements Comparable<ChannelName> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    /** Refuses names that would not survive an address. */
    public ChannelName {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException("channel name '" + value + "' is not allowed: " + FORM.pattern());
        }
    }

    @Override
    public int compareTo(ChannelName other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
