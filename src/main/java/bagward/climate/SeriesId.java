package bagward.climate;

import bagward.units.Quantity;
import java.util.Comparator;

/**
 * One quantity of one sensor.
 *
 * @param sensor the device
 * @param quantity what it measures
 */
public record SeriesId(SensorId sensor, Quantity quantity) implements Comparable<SeriesId> {
    private static final Comparator<SeriesId> ORDER =
            Comparator.comparing(SeriesId::sensor).thenComparing(SeriesId::quantity);

    @Override
    public int compareTo(SeriesId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return sensor + "/" + quantity.word();
    }
}
