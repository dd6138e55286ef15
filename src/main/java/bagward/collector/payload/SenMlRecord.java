package bagward.collector.payload;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One resolved SenML record (RFC 8428 section 4.6): no base fields, absolute time.
 *
 * @param name base name and name together
 * @param unit its unit, or that of the base; empty if neither is given
 * @param value a number, a text, a truth, bytes, or only a sum
 * @param sum the integrated value, if given
 * @param time absolute time, to the millisecond
 * @param timed whether the pack said the absolute time; false if it counts from the arrival
 * @param updateTime longest time until the next reading, seconds, if given
 * @param version version of the pack
 */
record SenMlRecord(
        String name,
        Optional<String> unit,
        Value value,
        OptionalDouble sum,
        Instant time,
        boolean timed,
        OptionalDouble updateTime,
        int version) {

    /** What a record carries. */
    sealed interface Value {
        /** {@code v}, with the base value added. */
        record Numeric(double number) implements Value {}

        /** {@code vs}. */
        record Text(String text) implements Value {}

        /** {@code vb}. */
        record Truth(boolean truth) implements Value {}

        /** {@code vd}, still as base64url text. */
        record Data(String base64Url) implements Value {}

        /** Only the sum {@code s}. */
        record SumOnly() implements Value {}
    }
}
