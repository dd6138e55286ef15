package bagward.alarm;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Short name of a rule.
 *
 * @param value lower-case letters, digits and '-', at most 40
 */
public record RuleId(String value) implements Comparable<RuleId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    /** Refuses names that would not survive an address. */
    public RuleId {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException("rule name '" + value + "' is not allowed: " + FORM.pattern());
        }
    }

    @Override
    public int compareTo(RuleId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
