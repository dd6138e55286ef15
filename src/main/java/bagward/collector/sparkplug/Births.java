package bagward.collector.sparkplug;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** What the last birth of an edge node or device said of its metrics. */
final class Births {
    /** Of one that was not heard. */
    static final Births NONE = new Births();

    private final Map<String, DataType> types = new HashMap<>();
    private final Map<Long, String> names = new HashMap<>();

    private Births() {}

    static Births of(SparkplugPayload payload) {
        Births births = new Births();
        for (Metric metric : payload.metrics()) {
            metric.name().ifPresent(name -> {
                births.types.put(name, DataType.of(metric.datatype()));
                metric.alias().ifPresent(alias -> births.names.put(alias, name));
            });
        }
        return births;
    }

    /**
     * The metric with its name and type, its own or those that the birth gave it.
     *
     * @throws SparkplugException if its name is not known
     */
    NamedMetric named(Metric metric, OptionalLong sentAt) {
        String name = metric.name()
                .or(() -> metric.alias().isPresent() ? known(metric.alias().getAsLong()) : Optional.empty())
                .orElseThrow(() -> new SparkplugException(unknown(metric)));
        DataType own = DataType.of(metric.datatype());
        return new NamedMetric(name, own == DataType.UNKNOWN ? types.getOrDefault(name, own) : own, metric, sentAt);
    }

    private Optional<String> known(long alias) {
        return Optional.ofNullable(names.get(alias));
    }

    private static String unknown(Metric metric) {
        return metric.alias().isPresent()
                ? "no birth that was heard names the alias "
                        + Long.toUnsignedString(metric.alias().getAsLong())
                : "a metric has neither name nor alias";
    }
}
