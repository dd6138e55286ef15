package bagward.collector.payload;

import java.time.Instant;

/** A format of which each message can be read by itself. */
public sealed interface SelfContained extends PayloadFormat permits BareNumber, JsonAt, SenMl {
    /**
     * The numbers of a payload.
     *
     * @param payload the bytes as they came
     * @param arrivedAt when they came; SenML counts relative times from it
     * @throws RefusedPayloadException if nothing of the payload can be used
     */
    Extraction extract(byte[] payload, Instant arrivedAt);
}
