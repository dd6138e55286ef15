package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.util.regex.Pattern;

/**
 * Name of a sensor, unique in the station.
 *
 * @param value letters, digits, '-', '_' and '.', starting with a letter or digit, at most 64
 */
public record SensorId(String value) implements Comparable<SensorId> {
    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

    /** Refuses names that would not survive a topic, a file name or an address. */
    public SensorId {
        if (!FORM.matcher(value).matches()) {
            throw new ImpossibleValueException("sensor name '" + value + "' is not allowed: " + FORM.pattern());
        }
    }

    @Override
    public int compareTo(SensorId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
