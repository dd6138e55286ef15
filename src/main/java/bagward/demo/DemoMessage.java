package bagward.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * One MQTT message of a demo sensor.
 *
 * @param topic where it is published
 * @param text its payload
 * @param at when it was measured
 */
public record DemoMessage(String topic, String text, Instant at) {
    /** The payload as UTF-8. */
    public byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
