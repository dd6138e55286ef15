package bagward.collector.sparkplug;

import java.io.IOException;
import java.util.Date;
import java.util.List;
import org.eclipse.tahu.SparkplugInvalidTypeException;
import org.eclipse.tahu.message.SparkplugBPayloadEncoder;
import org.eclipse.tahu.message.model.Metric;
import org.eclipse.tahu.message.model.Metric.MetricBuilder;
import org.eclipse.tahu.message.model.MetricDataType;
import org.eclipse.tahu.message.model.SparkplugBPayload;
import org.eclipse.tahu.message.model.SparkplugBPayload.SparkplugBPayloadBuilder;
import org.jspecify.annotations.Nullable;

/** Payloads as the implementation of the Eclipse Tahu project encodes them: not our code, not our reading of the schema. */
@SuppressWarnings("JavaUtilDate") // its interface has them
public final class Tahu {
    private Tahu() {}

    /** A metric as it stands in a birth: name, alias, type, time and value. */
    public static Metric birth(String name, long alias, MetricDataType type, @Nullable Object value, long millis) {
        return made(new MetricBuilder(name, type, value).alias(alias).timestamp(new Date(millis)));
    }

    /** A metric with its name only. */
    public static Metric named(String name, MetricDataType type, @Nullable Object value, long millis) {
        return made(new MetricBuilder(name, type, value).timestamp(new Date(millis)));
    }

    /** A metric as it stands in data: alias, time and value. */
    public static Metric data(long alias, MetricDataType type, @Nullable Object value, long millis) {
        return made(new MetricBuilder(alias, type, value).timestamp(new Date(millis)));
    }

    /** A float of an earlier time, told by its alias. */
    public static Metric historical(long alias, float value, long millis) {
        return made(new MetricBuilder(alias, MetricDataType.Float, value)
                .isHistorical(true)
                .timestamp(new Date(millis)));
    }

    /** The metric of a builder. */
    public static Metric made(MetricBuilder builder) {
        try {
            return builder.createMetric();
        } catch (SparkplugInvalidTypeException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** A whole payload with a sequence number; types go with births only, as edge nodes do to save bytes. */
    public static byte[] payload(long sequence, long millis, boolean withTypes, Metric... metrics) {
        return encode(new SparkplugBPayloadBuilder(sequence), millis, withTypes, metrics);
    }

    /** A payload without a sequence number, as a death has. */
    public static byte[] death(long birthNumber, long millis) {
        Metric number = made(new MetricBuilder("bdSeq", MetricDataType.Int64, birthNumber));
        return encode(new SparkplugBPayloadBuilder(), millis, true, number);
    }

    private static byte[] encode(SparkplugBPayloadBuilder builder, long millis, boolean withTypes, Metric... metrics) {
        SparkplugBPayload payload = builder.setTimestamp(new Date(millis))
                .addMetrics(List.of(metrics))
                .createPayload();
        try {
            return new SparkplugBPayloadEncoder().getBytes(payload, !withTypes);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
