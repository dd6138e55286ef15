package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.LightSource;
import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MessageDecoderTest {
    private static final Instant NOW = Instant.parse("2026-04-03T06:15:00Z");
    private static final SensorId SENSOR = new SensorId("s1");

    private static final PayloadFormat JSON = new JsonAt(
            List.of(
                    Place.of(Quantity.TEMPERATURE, "/t", MeasureUnit.CELSIUS),
                    Place.of(Quantity.HUMIDITY, "/h", MeasureUnit.PERCENT_HUMIDITY),
                    Place.of(Quantity.LIGHT, "/l", MeasureUnit.LUX).withCeiling(65535)),
            Optional.of(new JsonAt.TimeAt("/at", TimeForm.ISO)));

    private static Decoded decode(PayloadFormat format, String payload) {
        return decode(format, payload, false);
    }

    private static Decoded decode(PayloadFormat format, String payload, boolean retained) {
        SensorSource source = new SensorSource(SENSOR, new TopicFilter("house/+"), format);
        return new MessageDecoder(List.of(source), Duration.ofMinutes(5))
                .decode(new Message("house/a", payload.getBytes(StandardCharsets.UTF_8), NOW, retained));
    }

    private static PayloadFormat number(Quantity quantity, MeasureUnit unit) {
        return new BareNumber(Place.of(quantity, "", unit));
    }

    private static Reading only(Decoded decoded) {
        assertEquals(List.of(), decoded.refusals());
        assertEquals(1, decoded.readings().size());
        return decoded.readings().get(0);
    }

    private static String refusal(Decoded decoded) {
        assertEquals(List.of(), decoded.readings());
        assertEquals(1, decoded.refusals().size());
        return decoded.refusals().get(0);
    }

    @Test
    void a_bare_number_gets_the_time_of_arrival_and_says_so() {
        Reading reading = only(decode(number(Quantity.TEMPERATURE, MeasureUnit.CELSIUS), " 21.5\n"));
        assertEquals(
                new Reading(new SeriesId(SENSOR, Quantity.TEMPERATURE), NOW, 21.5, Set.of(ReadingFlag.TIME_OF_ARRIVAL)),
                reading);
    }

    @ParameterizedTest
    @CsvSource({
        "TEMPERATURE, CELSIUS, 21.5, 21.5",
        "TEMPERATURE, KELVIN, 294.65, 21.5",
        "TEMPERATURE, FAHRENHEIT, 70.7, 21.5",
        "TEMPERATURE, FAHRENHEIT, -40, -40",
        "HUMIDITY, PERCENT_HUMIDITY, 83.25, 83.25",
        "HUMIDITY, RATIO, 0.8325, 83.25",
        "LIGHT, MICROMOLE, 185.2, 185.2",
        // Thimijan and Heins 1983: 54 lx per umol in daylight, so 10 000 lx are 185.2
        "LIGHT, LUX, 10000, 185.185185",
        // McCree 1972: 0.45 x 4.57 umol per joule of global radiation
        "LIGHT, WATT_PER_SQUARE_METRE, 500, 1028.25",
    })
    void every_unit_is_converted_to_the_canonical_one(
            Quantity quantity, MeasureUnit unit, String payload, double expected) {
        assertEquals(expected, only(decode(number(quantity, unit), payload)).value(), 1e-6);
    }

    /** Thimijan and Heins 1983, HortScience 18(6):818-822: photon flux density at 10 000 lx. */
    @ParameterizedTest
    @CsvSource({
        "DAYLIGHT, 185.2",
        "HIGH_PRESSURE_SODIUM, 122.0",
        "METAL_HALIDE, 140.8",
        "COOL_WHITE_FLUORESCENT, 135.1",
        "BLUE_SKY, 192.3",
        "INCANDESCENT, 200.0"
    })
    void lux_converts_by_the_light_source(LightSource source, double expected) {
        assertEquals(
                expected,
                MeasureUnit.LUX.toCanonical(10_000, LightConversion.of(source)).orElseThrow(),
                0.05);
    }

    @Test
    void radiation_under_lamps_without_a_stated_factor_is_refused() {
        Place place = new Place(
                Quantity.LIGHT,
                "",
                Optional.of(MeasureUnit.WATT_PER_SQUARE_METRE),
                Optional.empty(),
                LightConversion.of(LightSource.METAL_HALIDE),
                java.util.OptionalDouble.empty());
        assertTrue(refusal(decode(new BareNumber(place), "100")).contains("light source"));
    }

    @Test
    void a_document_gives_a_reading_for_each_place_at_its_own_time() {
        Decoded decoded = decode(JSON, "{\"t\":21.5,\"h\":\"83.25\",\"at\":\"2026-04-03T08:00:00.250+02:00\"}");
        assertEquals(List.of(), decoded.refusals());
        assertEquals(2, decoded.readings().size());
        for (Reading reading : decoded.readings()) {
            assertEquals(Instant.parse("2026-04-03T06:00:00.250Z"), reading.measuredAt());
            assertEquals(Set.of(), reading.flags());
        }
    }

    @Test
    void one_bad_value_does_not_take_the_good_ones_with_it() {
        Decoded decoded = decode(JSON, "{\"t\":99,\"h\":83}");
        assertEquals(1, decoded.readings().size());
        assertEquals(1, decoded.refusals().size());
        assertTrue(decoded.refusals().get(0).contains("physical limits -40.0 to 80.0"), decoded.refusals()::toString);
    }

    @ParameterizedTest
    @CsvSource({"100, 100, ''", "100.5, 100, HUMIDITY_CAPPED", "104, 100, HUMIDITY_CAPPED"})
    void humidity_a_little_over_100_is_stored_as_100_with_a_flag(String payload, double value, String flag) {
        Reading reading = only(decode(number(Quantity.HUMIDITY, MeasureUnit.PERCENT_HUMIDITY), payload));
        assertEquals(value, reading.value());
        assertEquals(!flag.isEmpty(), reading.flags().contains(ReadingFlag.HUMIDITY_CAPPED));
    }

    @ParameterizedTest
    @ValueSource(strings = {"104.01", "-0.1"})
    void humidity_outside_its_limits_is_refused(String payload) {
        assertTrue(refusal(decode(number(Quantity.HUMIDITY, MeasureUnit.PERCENT_HUMIDITY), payload))
                .contains("physical limits"));
    }

    @Test
    void a_dark_sensor_that_reads_a_little_below_zero_reads_zero() {
        assertEquals(
                0,
                only(decode(number(Quantity.LIGHT, MeasureUnit.MICROMOLE), "-0.04"))
                        .value());
        assertTrue(refusal(decode(number(Quantity.LIGHT, MeasureUnit.MICROMOLE), "-5.1"))
                .contains("physical"));
    }

    @Test
    void a_value_at_the_ceiling_of_its_sensor_is_marked_as_clipped() {
        assertTrue(only(decode(JSON, "{\"l\":65535,\"at\":\"2026-04-03T06:00:00Z\"}"))
                .flags()
                .contains(ReadingFlag.CLIPPED));
        assertFalse(only(decode(JSON, "{\"l\":65534,\"at\":\"2026-04-03T06:00:00Z\"}"))
                .flags()
                .contains(ReadingFlag.CLIPPED));
    }

    @ParameterizedTest
    @CsvSource({
        "ISO, '\"2026-04-03T06:00:00Z\"', 2026-04-03T06:00:00Z",
        "ISO, '\"2026-04-03T08:00+02:00\"', 2026-04-03T06:00:00Z",
        "SECONDS, 1775196000, 2026-04-03T06:00:00Z",
        "SECONDS, 1775196000.25, 2026-04-03T06:00:00.250Z",
        "SECONDS, '\"1775196000\"', 2026-04-03T06:00:00Z",
        "MILLISECONDS, 1775196000250, 2026-04-03T06:00:00.250Z",
    })
    void times_are_read_in_the_form_that_is_configured(TimeForm form, String time, Instant expected) {
        PayloadFormat format = new JsonAt(
                List.of(Place.of(Quantity.TEMPERATURE, "/t", MeasureUnit.CELSIUS)),
                Optional.of(new JsonAt.TimeAt("/at", form)));
        assertEquals(
                expected, only(decode(format, "{\"t\":1,\"at\":" + time + "}")).measuredAt());
    }

    @ParameterizedTest
    @CsvSource({
        "2026-04-03T06:20:00.001Z, after its arrival",
        "1999-12-31T23:59:59Z, never set",
        "2026-04-03T06:00:00, not ISO 8601",
        "1775196000, not ISO 8601",
    })
    void times_that_cannot_be_are_refused(String time, String reason) {
        String refusal = refusal(decode(JSON, "{\"t\":1,\"at\":\"" + time + "\"}"));
        assertTrue(refusal.contains(reason), refusal);
    }

    @Test
    void a_clock_ahead_by_the_tolerance_is_allowed() {
        assertEquals(
                1,
                decode(JSON, "{\"t\":1,\"at\":\"2026-04-03T06:20:00Z\"}")
                        .readings()
                        .size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "NaN", "Infinity", "1e999", "21,5", "21.5 C", "0x15", "1_000", "--1", "true", "1e", "١٢"
            })
    void a_payload_that_is_no_number_is_refused(String payload) {
        refusal(decode(number(Quantity.TEMPERATURE, MeasureUnit.CELSIUS), payload));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{\"t\":NaN}",
                "{\"t\":Infinity}",
                "{\"t\":1e999}",
                "{\"t\":1,\"t\":2}",
                "{\"t\":1} {\"t\":2}",
                "{\"t\":1}x",
                "{'t':1}",
                "{\"t\":true}",
                "{\"t\":\"warm\"}",
                "{\"t\":[21.5]}",
                "{\"t\":01}",
            })
    void a_document_that_is_not_clean_json_with_numbers_is_refused(String payload) {
        refusal(decode(JSON, payload));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "[]", "17", "{\"t\":null}", "{\"other\":1}"})
    void a_document_without_anything_configured_says_what_was_looked_for(String payload) {
        String reason = refusal(decode(JSON, payload));
        assertTrue(reason.contains("temperature at /t humidity at /h light at /l"), reason);
    }

    @Test
    void a_document_nested_too_deep_is_refused_and_not_followed() {
        refusal(decode(JSON, "[".repeat(30_000)));
    }

    @Test
    void a_payload_too_long_is_refused() {
        assertTrue(refusal(decode(JSON, "{\"t\":1" + " ".repeat(64 * 1024) + "}"))
                .contains("bytes"));
    }

    @Test
    void the_unit_can_stand_in_the_document() {
        Place place = new Place(
                Quantity.TEMPERATURE,
                "/t",
                Optional.empty(),
                Optional.of("/u"),
                LightConversion.UNKNOWN,
                java.util.OptionalDouble.empty());
        PayloadFormat format = new JsonAt(List.of(place), Optional.empty());
        assertEquals(21.5, only(decode(format, "{\"t\":70.7,\"u\":\"°F\"}")).value(), 1e-9);
        assertTrue(refusal(decode(format, "{\"t\":70.7,\"u\":\"lux\"}")).contains("Cel, K, F"));
        assertTrue(refusal(decode(format, "{\"t\":70.7}")).contains("no unit at /u"));
    }

    @Test
    void a_retained_message_without_time_of_its_own_is_refused() {
        assertTrue(refusal(decode(number(Quantity.TEMPERATURE, MeasureUnit.CELSIUS), "21.5", true))
                .contains("retained"));
        assertEquals(
                1,
                decode(JSON, "{\"t\":1,\"at\":\"2026-04-03T06:00:00Z\"}", true)
                        .readings()
                        .size());
    }

    @Test
    void senml_is_read_by_the_ending_of_the_name_and_by_its_own_unit() {
        PayloadFormat format = new SenMl(List.of(
                Place.of(Quantity.TEMPERATURE, ":temp", MeasureUnit.CELSIUS),
                Place.of(Quantity.HUMIDITY, ":hum", MeasureUnit.PERCENT_HUMIDITY)));
        Decoded decoded = decode(format, """
                [{"bn":"urn:dev:mac:0024befffe804ff1","bt":1775196000,"n":":temp","u":"K","v":294.65},
                 {"n":":hum","u":"/","v":0.8},{"n":":label","vs":"north"}]""");
        assertEquals(List.of(), decoded.refusals());
        assertEquals(21.5, decoded.readings().get(0).value(), 1e-9);
        assertEquals(80, decoded.readings().get(1).value(), 1e-9);
        assertEquals(Set.of(), decoded.readings().get(0).flags());
    }

    @Test
    void senml_that_counts_from_now_is_marked_with_the_time_of_arrival() {
        PayloadFormat format = new SenMl(List.of(Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS)));
        Reading reading = only(decode(format, "[{\"n\":\"x\",\"u\":\"Cel\",\"t\":-60,\"v\":21.5}]"));
        assertEquals(NOW.minusSeconds(60), reading.measuredAt());
        assertEquals(Set.of(ReadingFlag.TIME_OF_ARRIVAL), reading.flags());
    }

    @Test
    void senml_with_two_names_that_fit_is_refused() {
        PayloadFormat format = new SenMl(List.of(Place.of(Quantity.TEMPERATURE, "temp", MeasureUnit.CELSIUS)));
        assertTrue(refusal(decode(format, "[{\"bu\":\"Cel\",\"n\":\"a:temp\",\"v\":1},{\"n\":\"b:temp\",\"v\":2}]"))
                .contains("whole name"));
    }

    @Test
    void two_sensors_may_share_a_topic_and_neither_minds_what_the_other_lacks() {
        SensorSource first = new SensorSource(
                new SensorId("s1"),
                new TopicFilter("gateway"),
                new JsonAt(List.of(Place.of(Quantity.TEMPERATURE, "/a", MeasureUnit.CELSIUS)), Optional.empty()));
        SensorSource second = new SensorSource(
                new SensorId("s2"),
                new TopicFilter("#"),
                new JsonAt(List.of(Place.of(Quantity.TEMPERATURE, "/b", MeasureUnit.CELSIUS)), Optional.empty()));
        Decoded decoded = new MessageDecoder(List.of(first, second), Duration.ZERO)
                .decode(new Message("gateway", "{\"b\":2}".getBytes(StandardCharsets.UTF_8), NOW, false));
        assertEquals(new SensorId("s2"), only(decoded).series().sensor());
    }

    @Test
    void a_topic_that_nobody_listens_to_is_not_known() {
        Decoded decoded =
                new MessageDecoder(List.of(), Duration.ZERO).decode(new Message("x", new byte[0], NOW, false));
        assertFalse(decoded.known());
    }
}
