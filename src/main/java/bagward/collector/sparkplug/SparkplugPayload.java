package bagward.collector.sparkplug;

import java.util.List;
import java.util.OptionalLong;

/**
 * A payload.
 *
 * @param timestamp when it was sent, milliseconds since 1970, if it says so
 * @param sequence its sequence number, 0 to 255, if it has one
 * @param metrics its metrics
 */
record SparkplugPayload(OptionalLong timestamp, OptionalLong sequence, List<Metric> metrics) {
    SparkplugPayload {
        metrics = List.copyOf(metrics);
    }

    /** The number that ties a death to its birth, the metric {@code bdSeq} (Sparkplug 3.0, chapter 6.4.20). */
    OptionalLong birthNumber() {
        for (Metric metric : metrics) {
            if (metric.name().filter("bdSeq"::equals).isPresent()
                    && metric.value().orElse(null) instanceof MetricValue.Whole whole) {
                return OptionalLong.of(whole.bits());
            }
        }
        return OptionalLong.empty();
    }
}
