package bagward.collector.payload;

import bagward.climate.Reading;
import java.util.List;

/**
 * What became of a message.
 *
 * @param known whether any source listens to its topic
 * @param readings the readings in it
 * @param refusals why it, or a part of it, cannot be used; empty if all went well
 */
public record Decoded(boolean known, List<Reading> readings, List<String> refusals) {
    /** Copies the lists. */
    public Decoded {
        readings = List.copyOf(readings);
        refusals = List.copyOf(refusals);
    }
}
