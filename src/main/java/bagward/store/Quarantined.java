package bagward.store;

import bagward.climate.Reading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * A message (or a part of one) that could not be used, kept so that a person can look at it.
 *
 * @param arrivedAt when it arrived
 * @param topic its topic
 * @param payload its payload as it came
 * @param reason why it could not be used, one sentence with the rule
 */
public record Quarantined(Instant arrivedAt, String topic, Payload payload, String reason) {
    /** The lower one of two readings of one series and time, of which the higher one is kept. */
    public static Quarantined lower(Reading lower, Instant now) {
        return refused(
                lower,
                now,
                "another value of this series for the same time is higher and was kept: one series has one value at a"
                        + " time");
    }

    /** A reading that the store of readings does not keep. */
    public static Quarantined refused(Reading reading, Instant now, String reason) {
        String text = reading.measuredAt() + " " + reading.value() + " "
                + reading.series().quantity().unitCode();
        return new Quarantined(
                now, reading.series().toString(), Payload.of(text.getBytes(StandardCharsets.UTF_8)), reason);
    }
}
