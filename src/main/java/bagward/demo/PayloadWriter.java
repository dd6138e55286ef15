package bagward.demo;

import java.time.Instant;

/** How a sensor words what it shows. */
@FunctionalInterface
interface PayloadWriter {
    /** The text of one message. */
    String write(Instant at, AirSample shown);
}
