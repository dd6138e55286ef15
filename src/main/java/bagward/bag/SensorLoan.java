package bagward.bag;

import bagward.climate.SensorId;
import java.time.Instant;
import java.util.Optional;

/**
 * A spare sensor that hangs in a bag for a time.
 *
 * @param sensor the spare sensor
 * @param tag the head whose bag it hangs in
 * @param from since when
 * @param to until when; empty while it hangs there
 */
public record SensorLoan(SensorId sensor, TagCode tag, Instant from, Optional<Instant> to) {}
