package bagward.collector.sparkplug;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** A metric whose name and data type are known. */
public final class NamedMetric {
    private static final long GOOD = 192;

    /** The end of the year 9999, milliseconds since 1970. */
    private static final long LAST_MILLISECOND = 253_402_300_799_999L;

    private final String name;
    private final DataType type;
    private final Metric metric;
    private final OptionalLong sentAt;

    /** @param sentAt time of the payload, which stands in for that of the metric */
    NamedMetric(String name, DataType type, Metric metric, OptionalLong sentAt) {
        this.name = name;
        this.type = type;
        this.metric = metric;
        this.sentAt = sentAt;
    }

    /** Its name. */
    public String name() {
        return name;
    }

    /** Whether it is not the current value but one from before. */
    public boolean historical() {
        return metric.historical();
    }

    /** Whether it says that there is no value: that is no fault, and no reading. */
    public boolean absent() {
        return metric.absent();
    }

    /**
     * Its value as a number; empty if it is a text, see {@link #text}.
     *
     * @throws SparkplugException if it has none, none of good quality, or none that can be a number
     */
    public OptionalDouble number() {
        if (metric.quality().isPresent() && metric.quality().getAsLong() != GOOD) {
            throw new SparkplugException(
                    "has the quality " + quality(metric.quality().getAsLong()) + ": no reading");
        }
        return type.number(metric.value().orElseThrow(() -> new SparkplugException("has no value")));
    }

    /** Its value as a text; empty if it is none. */
    public Optional<String> text() {
        return metric.value().map(value -> value instanceof MetricValue.Text text ? text.text() : "");
    }

    /**
     * When it was captured: its own time, or that of the payload; empty if neither says.
     *
     * @throws SparkplugException if that is no time between 1970 and 9999, or if it is historical and has none
     */
    public Optional<Instant> capturedAt() {
        OptionalLong time = metric.timestamp().isPresent() || historical() ? metric.timestamp() : sentAt;
        if (time.isEmpty()) {
            if (historical()) {
                throw new SparkplugException("is historical and does not say of which time");
            }
            return Optional.empty();
        }
        if (time.getAsLong() < 0 || time.getAsLong() > LAST_MILLISECOND) {
            throw new SparkplugException("has a time outside 1970 to 9999");
        }
        return Optional.of(Instant.ofEpochMilli(time.getAsLong()));
    }

    private static String quality(long code) {
        return switch ((int) code) {
            case 0 -> "bad (0)";
            case 500 -> "stale (500)";
            default -> Long.toString(code);
        };
    }
}
