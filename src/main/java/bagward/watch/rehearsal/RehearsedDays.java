package bagward.watch.rehearsal;

import bagward.station.Sensor;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The stretch of the past that is looked at.
 *
 * @param from its begin
 * @param to its end
 * @param every how often the rules look
 */
public record RehearsedDays(Instant from, Instant to, Duration every) {
    /** Readings before the begin that are needed: four weeks of nights for the outlook, and a day for loans. */
    static final Duration RUN_UP = Duration.ofDays(29);

    private static final double SECONDS_A_DAY = 86_400;

    /** How many days. */
    public double days() {
        return Duration.between(from, to).toSeconds() / SECONDS_A_DAY;
    }

    /** First instant whose readings are needed. */
    Instant readFrom() {
        return from.minus(RUN_UP);
    }

    /** About how many readings that are, if every sensor was heard as expected. */
    public long readings(List<Sensor> sensors) {
        double seconds = Duration.between(readFrom(), to).toSeconds();
        return sensors.stream()
                .mapToLong(sensor -> Math.round(sensor.series().size()
                        * seconds
                        / sensor.expectedEvery().toSeconds()))
                .sum();
    }
}
