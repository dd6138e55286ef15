package bagward.alarm;

import java.time.Instant;
import java.util.Optional;

/**
 * Why an alarm is hidden although it may hold.
 *
 * @param by who set it aside; "rule" if the design did
 * @param from since when
 * @param until when it comes back by itself; empty if a person must bring it back or the cause must end
 * @param why the reason, or what suppresses it
 */
public record Aside(String by, Instant from, Optional<Instant> until, String why) {}
