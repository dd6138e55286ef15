package bagward.collector.sparkplug;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.eclipse.tahu.message.model.Metric.MetricBuilder;
import org.eclipse.tahu.message.model.MetricDataType;
import org.eclipse.tahu.message.model.PropertyDataType;
import org.eclipse.tahu.message.model.PropertySet;
import org.eclipse.tahu.message.model.PropertyValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Payloads that Eclipse Tahu encoded are read as it meant them; damaged ones are refused. */
class PayloadReaderTest {
    private static final long SENT = 1_775_196_900_000L;

    private static NamedMetric only(byte[] payload) {
        SparkplugPayload read = PayloadReader.read(payload);
        assertEquals(1, read.metrics().size());
        return Births.of(read).named(read.metrics().get(0), read.timestamp());
    }

    static Stream<Arguments> numbers() {
        return Stream.of(
                Arguments.of(MetricDataType.Int8, (byte) -5, -5.0),
                Arguments.of(MetricDataType.Int8, Byte.MAX_VALUE, 127.0),
                Arguments.of(MetricDataType.Int16, (short) -300, -300.0),
                Arguments.of(MetricDataType.Int32, -70_000, -70_000.0),
                Arguments.of(MetricDataType.Int32, Integer.MIN_VALUE, -2_147_483_648.0),
                Arguments.of(MetricDataType.Int64, -5L, -5.0),
                Arguments.of(MetricDataType.UInt8, (short) 200, 200.0),
                Arguments.of(MetricDataType.UInt16, 60_000, 60_000.0),
                Arguments.of(MetricDataType.UInt32, 4_000_000_000L, 4e9),
                Arguments.of(MetricDataType.UInt64, new BigInteger("18446744073709551615"), 0x1p64),
                Arguments.of(MetricDataType.Float, 21.3f, 21.3),
                Arguments.of(MetricDataType.Double, -0.25, -0.25));
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void each_type_of_number_is_read_with_its_sign(MetricDataType type, Object value, double expected) {
        NamedMetric metric = only(Tahu.payload(3, SENT, true, Tahu.birth("t", 7, type, value, SENT - 1000)));
        assertEquals("t", metric.name());
        assertEquals(OptionalDouble.of(expected), metric.number());
        assertEquals(Optional.of(Instant.ofEpochMilli(SENT - 1000)), metric.capturedAt());
    }

    @Test
    void a_text_is_handed_over_as_text_and_truth_is_no_number() {
        NamedMetric text = only(Tahu.payload(3, SENT, true, Tahu.birth("t", 7, MetricDataType.String, "21.5", SENT)));
        assertEquals(OptionalDouble.empty(), text.number());
        assertEquals(Optional.of("21.5"), text.text());
        NamedMetric truth = only(Tahu.payload(3, SENT, true, Tahu.birth("t", 7, MetricDataType.Boolean, true, SENT)));
        assertTrue(assertThrows(SparkplugException.class, truth::number)
                .getMessage()
                .contains("true or false"));
    }

    @Test
    void the_time_of_the_payload_stands_in_for_that_of_a_metric_but_not_of_a_historical_one() {
        MetricBuilder plain = new MetricBuilder("t", MetricDataType.Double, 21.5).timestamp(null);
        assertEquals(
                Optional.of(Instant.ofEpochMilli(SENT)),
                only(Tahu.payload(3, SENT, true, Tahu.made(plain))).capturedAt());
        NamedMetric old = only(Tahu.payload(3, SENT, true, Tahu.made(plain.isHistorical(true))));
        assertTrue(old.historical());
        assertThrows(SparkplugException.class, old::capturedAt);
    }

    @Test
    void no_value_is_told_from_zero() {
        NamedMetric none = only(Tahu.payload(3, SENT, true, Tahu.birth("t", 7, MetricDataType.Double, null, SENT)));
        assertTrue(none.absent());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 500})
    void a_value_of_bad_or_stale_quality_is_no_reading(int quality) throws Exception {
        NamedMetric metric = only(Tahu.payload(3, SENT, true, Tahu.made(withQuality(quality))));
        assertTrue(assertThrows(SparkplugException.class, metric::number)
                .getMessage()
                .contains("quality"));
        assertEquals(
                OptionalDouble.of(21.5),
                only(Tahu.payload(3, SENT, true, Tahu.made(withQuality(192)))).number());
    }

    private static MetricBuilder withQuality(int quality) throws Exception {
        PropertySet properties = new PropertySet();
        properties.setProperty("Unit", new PropertyValue<>(PropertyDataType.String, "C"));
        properties.setProperty("Quality", new PropertyValue<>(PropertyDataType.Int32, quality));
        return new MetricBuilder("t", MetricDataType.Double, 21.5).properties(properties);
    }

    @Test
    void sequence_and_birth_number_are_read() {
        SparkplugPayload death = PayloadReader.read(Tahu.death(9, SENT));
        assertEquals(OptionalLong.empty(), death.sequence());
        assertEquals(OptionalLong.of(9), death.birthNumber());
        assertEquals(
                OptionalLong.of(200),
                PayloadReader.read(Tahu.payload(200, SENT, true)).sequence());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12ffffffff07", // a metric of 2 GB
                "12ffffffffffffffffff01", // a metric of negative length
                "1205", // a metric of 5 bytes that are not there
                "12030affff", // a name longer than its metric
                "0a0101", // the time as text
                "1300000000", // a group
                "18ac02", // sequence number 300
                "00", // field 0
                "12040a02c328", // a name that is not UTF-8
                "ff",
            })
    void what_is_damaged_or_lies_about_its_length_is_refused(String hex) {
        assertThrows(
                SparkplugException.class,
                () -> PayloadReader.read(HexFormat.of().parseHex(hex)));
    }

    @Test
    void too_much_is_refused() {
        assertThrows(SparkplugException.class, () -> PayloadReader.read(new byte[PayloadReader.LONGEST + 1]));
        byte[] metrics = new byte[20_004];
        for (int i = 0; i < metrics.length; i += 2) {
            metrics[i] = 0x12;
        }
        assertThrows(SparkplugException.class, () -> PayloadReader.read(metrics));
        assertEquals(
                10_000,
                PayloadReader.read(Arrays.copyOf(metrics, 20_000)).metrics().size());
    }
}
