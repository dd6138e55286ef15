package bagward.collector.payload;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * What became of a message.
 *
 * @param known whether any source listens to its topic
 * @param readings the readings in it
 * @param refusals why it, or a part of it, cannot be used; empty if all went well
 * @param ahead for each sensor that gave times of its own, usable or not: the newest less the time of arrival; a retained
 *     message says nothing of clocks
 */
public record Decoded(boolean known, List<Reading> readings, List<String> refusals, Map<SensorId, Duration> ahead) {
    /** Copies the collections. */
    public Decoded {
        readings = List.copyOf(readings);
        refusals = List.copyOf(refusals);
        ahead = Map.copyOf(ahead);
    }

    /** One without times of its own. */
    public Decoded(boolean known, List<Reading> readings, List<String> refusals) {
        this(known, readings, refusals, Map.of());
    }
}
