package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Quantity;
import bagward.units.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * What a humidity sensor read once it had come to rest, as a check over a salt needs it.
 *
 * @param humidity mean of the raw readings in the window
 * @param temperature of sensor, air and salt
 * @param moved largest less smallest humidity in the window, %RH
 */
public record RestedReading(RelativeHumidity humidity, Celsius temperature, double moved) {
    /** Over a salt the air comes to rest slowly; in this time hardly anything may move. Ours. */
    private static final Duration SHORTEST_WINDOW = Duration.ofMinutes(15);
    /** A window has at least so many readings. */
    private static final int FEWEST = 3;
    /** A sensor whose humidity moves more than this within the window is not at rest, %RH. Ours. */
    private static final double MOST_MOVEMENT = 1;

    /**
     * The mean of the readings up to an instant.
     *
     * @param raw uncorrected readings
     * @param sensor the sensor
     * @param every its expected interval; the window is four of them, but at least 15 minutes
     * @param at end of the window, inclusive
     * @param stated temperature that a person read; without it the sensor's own counts
     * @throws ImpossibleValueException with the reason, if there are too few readings, they still move, the sensor stood at
     *     its upper end, or there is no temperature
     */
    public static RestedReading before(
            ReadingSource raw, SensorId sensor, Duration every, Instant at, Optional<Celsius> stated) {
        Duration four = every.multipliedBy(4);
        Duration window = four.compareTo(SHORTEST_WINDOW) > 0 ? four : SHORTEST_WINDOW;
        List<Reading> humid = readings(raw, new SeriesId(sensor, Quantity.HUMIDITY), at, window);
        if (humid.size() < FEWEST) {
            throw new ImpossibleValueException("the sensor sent " + humid.size() + " readings of humidity in the "
                    + window.toMinutes() + " min before; at least " + FEWEST + " are needed");
        }
        if (humid.stream().anyMatch(r -> r.flags().contains(ReadingFlag.HUMIDITY_CAPPED))) {
            throw new ImpossibleValueException(
                    "the sensor read above 100 %RH, where what it read is cut off: take a drier salt");
        }
        DoubleSummaryStatistics values =
                humid.stream().mapToDouble(Reading::value).summaryStatistics();
        double moved = values.getMax() - values.getMin();
        if (moved > MOST_MOVEMENT) {
            throw new ImpossibleValueException("humidity moved by " + Math.round(moved * 10) / 10.0 + " %RH in the "
                    + window.toMinutes() + " min before: wait until it moves by less than " + MOST_MOVEMENT + " %RH");
        }
        Celsius temperature = stated.or(
                        () -> mean(readings(raw, new SeriesId(sensor, Quantity.TEMPERATURE), at, window)))
                .orElseThrow(
                        () -> new ImpossibleValueException("the sensor sent no temperature: state the one you read"));
        return new RestedReading(new RelativeHumidity(values.getAverage()), temperature, moved);
    }

    private static List<Reading> readings(ReadingSource raw, SeriesId series, Instant at, Duration window) {
        return raw.readings(series, at.minus(window), at.plusMillis(1)).stream()
                .filter(Reading::timeHolds)
                .toList();
    }

    private static Optional<Celsius> mean(List<Reading> readings) {
        return readings.isEmpty()
                ? Optional.empty()
                : Optional.of(new Celsius(
                        readings.stream().mapToDouble(Reading::value).average().orElseThrow()));
    }
}
