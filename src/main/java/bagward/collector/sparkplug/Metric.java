package bagward.collector.sparkplug;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * A metric as it stands in a payload.
 *
 * @param name its name; empty where the alias stands for it
 * @param alias its alias, if it has one
 * @param timestamp when it was captured, milliseconds since 1970, if it says so
 * @param datatype code of its data type, if it says so
 * @param historical whether it is not the current value but one from before
 * @param absent whether it says that there is no value
 * @param quality code of its quality, if it says so
 * @param value its value, if it has one
 */
record Metric(
        Optional<String> name,
        OptionalLong alias,
        OptionalLong timestamp,
        OptionalInt datatype,
        boolean historical,
        boolean absent,
        OptionalLong quality,
        Optional<MetricValue> value) {}
