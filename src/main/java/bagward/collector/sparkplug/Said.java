package bagward.collector.sparkplug;

import java.util.List;

/**
 * What a message of an edge node or device says.
 *
 * @param metrics its metrics, each with its name
 * @param birth whether it is a birth, which has all metrics
 * @param troubles metrics whose name is not known, one sentence each
 */
public record Said(List<NamedMetric> metrics, boolean birth, List<String> troubles) {
    static final Said NOTHING = new Said(List.of(), false, List.of());

    /** Copies the lists. */
    public Said {
        metrics = List.copyOf(metrics);
        troubles = List.copyOf(troubles);
    }
}
