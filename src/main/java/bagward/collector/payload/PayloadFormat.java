package bagward.collector.payload;

import java.time.Instant;
import java.util.List;

/** How the messages of a sensor are written. */
public sealed interface PayloadFormat permits BareNumber, JsonAt, SenMl {
    /** What is read from it. */
    List<Place> places();

    /**
     * The numbers of a payload.
     *
     * @param payload the bytes as they came
     * @param arrivedAt when they came; SenML counts relative times from it
     * @throws RefusedPayloadException if nothing of the payload can be used
     */
    Extraction extract(byte[] payload, Instant arrivedAt);
}
