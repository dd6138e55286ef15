package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SensorId;
import bagward.collector.payload.BareNumber;
import bagward.collector.payload.JsonAt;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.Place;
import bagward.collector.payload.SenMl;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.SparkplugDevice;
import bagward.collector.payload.TimeForm;
import bagward.collector.payload.TopicFilter;
import bagward.collector.sparkplug.NodeId;
import bagward.document.Inspection;
import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CollectorReaderTest {
    private static final Path FOLDER = Path.of("data/broker");

    private final Inspection inspection = new Inspection();

    private List<String> sentences() {
        return inspection.faults().stream().map(Fault::sentence).toList();
    }

    private Optional<BrokerSettings> broker(String text) {
        Section top = Section.parse("test.yaml", "broker: " + text, inspection);
        return CollectorReader.broker(
                top.section("broker"), FOLDER, Path.of("/etc/bagward"), Secrets.of(Map.of("SECRET", "alder-7")));
    }

    /** The sources of sensor s1 with these further keys. */
    private List<SensorSource> sensor(String keys) {
        Section top = Section.parse("test.yaml", "sensors:\n- id: s1\n" + keys.indent(2), inspection);
        return CollectorReader.sources(top.sections("sensors", 1));
    }

    @Test
    void without_an_address_the_broker_is_our_own_on_this_machine() {
        assertEquals(Optional.of(BrokerSettings.Embedded.onThisMachine(FOLDER, 1884)), broker("{port: 1884}"));
    }

    @Test
    void an_address_with_tls_and_a_password_from_the_environment_is_read() {
        BrokerSettings settings = broker(
                        "{url: 'mqtts://alder.example', user: bagward, password-from: SECRET, ca-file: ca.pem}")
                .orElseThrow();
        assertEquals(
                new BrokerSettings.External(
                        new BrokerLink(
                                "ssl://alder.example:8883",
                                Optional.of(new Credentials("bagward", "alder-7")),
                                Optional.of(Path.of("/etc/bagward/ca.pem"))),
                        20),
                settings);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{host: 0.0.0.0} | broker.host: found '0.0.0.0'; must be this machine only",
                "{host: 0.0.0.0, user: a, password-from: UNSET} | must name an environment variable that is set",
                "{user: a} | user and password-from (or password-file) go together",
                "{password-from: SECRET} | user and password-from (or password-file) go together",
                "{url: 'http://alder.example'} | must be mqtt://host:port",
                "{url: 'mqtt://a:b@alder.example'} | must be mqtt://host:port",
                "{url: 'mqtt://alder.example', ca-file: ca.pem} | with TLS only",
                "{url: 'mqtt://alder.example', port: 1883} | this key is not known here",
                "{hosst: 127.0.0.1} | Did you mean 'host'?",
            })
    void a_wrong_broker_is_refused_with_the_rule(String text, String expected) {
        assertTrue(broker(text).isEmpty());
        assertEquals(1, sentences().size(), sentences()::toString);
        assertTrue(sentences().get(0).contains(expected), sentences()::toString);
    }

    @Test
    void a_json_sensor_is_read_with_pointers_units_and_time() {
        List<SensorSource> sources = sensor("""
                topic: station/north/air
                payload: json
                time: /at
                time-form: seconds
                reads:
                - {quantity: temperature, at: /t, unit: F}
                - {quantity: light, at: /lux, unit: lx, light-source: daylight, ceiling: 65535}
                """);
        assertEquals(List.of(), sentences());
        Place temperature = new Place(
                Quantity.TEMPERATURE,
                "/t",
                Optional.of(MeasureUnit.FAHRENHEIT),
                Optional.empty(),
                bagward.collector.payload.LightConversion.UNKNOWN,
                java.util.OptionalDouble.empty());
        assertEquals(
                List.of(new SensorSource(
                        new SensorId("s1"),
                        new TopicFilter("station/north/air"),
                        new JsonAt(
                                List.of(
                                        temperature,
                                        Place.of(Quantity.LIGHT, "/lux", MeasureUnit.LUX)
                                                .withCeiling(65535)),
                                Optional.of(new JsonAt.TimeAt("/at", TimeForm.SECONDS))))),
                sources);
    }

    @Test
    void a_sensor_with_a_topic_for_each_number_has_a_source_for_each() {
        List<SensorSource> sources = sensor("""
                payload: number
                reads:
                - {quantity: temperature, unit: Cel, topic: north/t}
                - {quantity: humidity, unit: "%RH", topic: north/h}
                """);
        assertEquals(List.of(), sentences());
        assertEquals(
                List.of("north/t", "north/h"),
                sources.stream().map(s -> s.topic().text()).toList());
        assertTrue(sources.stream().allMatch(s -> s.format() instanceof BareNumber));
    }

    @Test
    void a_senml_sensor_needs_neither_name_nor_unit() {
        List<SensorSource> sources = sensor("topic: gateway\npayload: senml\nreads: [{quantity: temperature}]");
        assertEquals(List.of(), sentences());
        assertTrue(sources.get(0).format() instanceof SenMl);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "payload: jsn | Did you mean 'json'?",
                "payload: json, reads: [{quantity: temperature, at: t, unit: Cel}] | must be a JSON Pointer (RFC 6901)",
                "payload: json, reads: [{quantity: temperature, unit: Cel}] | must be a JSON Pointer (RFC 6901)",
                "payload: json, reads: [{quantity: temperature, at: /t}] | reads[0].unit: this is required and missing",
                "payload: json, reads: [{quantity: temperature, at: /t, unit: lx}] | must be one of Cel, F, K",
                "payload: json, reads: [{quantity: light, at: /t, unit: lx}] | Add light-source",
                "payload: json, reads: [{quantity: light, at: /t, unit: W/m2, light-source: metal-halide}] | No factor is known for metal-halide",
                "payload: json, reads: [{quantity: humidity, at: /t, unit: '%RH', factor: 2}] | is of use for light only",
                "payload: number, reads: [{quantity: humidity, at: /t, unit: '%RH'}] | the number is the whole payload",
                "payload: number, time: /t, reads: [{quantity: humidity, unit: '%RH'}] | with payload json only",
                "payload: json, reads: [{quantity: humidity, at: /t, unit: '%RH', unti-at: /u}] | Did you mean 'unit-at'?",
            })
    void a_wrong_sensor_is_refused_with_the_rule(String keys, String expected) {
        String block = keys.replace(", reads: ", "\nreads: ").replace(", time: ", "\ntime: ");
        if (!block.contains("reads:")) {
            block += "\nreads: [{quantity: temperature, unit: Cel}]";
        }
        assertEquals(List.of(), sensor("topic: x\n" + block));
        assertEquals(1, sentences().size(), sentences()::toString);
        assertTrue(sentences().get(0).contains(expected), sentences()::toString);
    }

    @Test
    void two_numbers_on_one_topic_are_refused() {
        sensor("topic: x\npayload: number\nreads: [{quantity: temperature, unit: Cel}, {quantity: humidity, unit: /}]");
        assertEquals(2, sentences().size());
        assertTrue(sentences().get(0).contains("give each entry of reads its own topic"), sentences()::toString);
    }

    @Test
    void a_topic_that_a_broker_would_refuse_is_refused_with_its_line() {
        sensor("topic: a/#/b\npayload: number\nreads: [{quantity: temperature, unit: Cel}]");
        assertTrue(
                sentences().get(0).startsWith("test.yaml line 3, sensors[0].topic: found 'a/#/b'"),
                sentences()::toString);
    }

    @Test
    void the_settings_have_usual_values() {
        assertEquals(Optional.of(CollectorSettings.USUAL), CollectorReader.settings(Optional.empty()));
        Section top = Section.parse(
                "test.yaml",
                "collector: {client-id: alder-bank, future-tolerance: 10 min, hear-all: false}",
                inspection);
        CollectorSettings settings =
                CollectorReader.settings(top.findSection("collector")).orElseThrow();
        assertEquals("alder-bank", settings.clientId());
        assertEquals(Duration.ofMinutes(10), settings.futureTolerance());
        assertEquals(CollectorSettings.USUAL.batchMost(), settings.batchMost());
    }

    @Test
    void a_sparkplug_sensor_is_read_with_its_place_in_the_namespace() {
        List<SensorSource> sources = sensor("""
                payload: sparkplug
                group: alder
                node: gateway
                device: th-1
                reads:
                - {quantity: humidity, at: Air/Humidity, unit: "%RH"}
                """);
        assertEquals(List.of(), sentences());
        assertEquals("spBv1.0/alder/+/gateway/#", sources.get(0).topic().text());
        SparkplugDevice device = (SparkplugDevice) sources.get(0).format();
        assertEquals(new NodeId("alder", "gateway"), device.node());
        assertEquals(Optional.of("th-1"), device.device());
        assertEquals("Air/Humidity", device.places().get(0).at());
        assertEquals(Optional.of("alder/gateway"), sources.get(0).gateway());
    }

    @Test
    void the_gateway_of_a_sensor_holds_for_all_its_topics() {
        List<SensorSource> sources = sensor("""
                payload: number
                gateway: north gateway
                reads:
                - {quantity: humidity, unit: "%RH", topic: a/h}
                - {quantity: temperature, unit: Cel, topic: a/t}
                """);
        assertEquals(List.of(), sentences());
        assertEquals(
                List.of(Optional.of("north gateway"), Optional.of("north gateway")),
                sources.stream().map(SensorSource::gateway).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "payload: sparkplug, group: a/b, node: n | must be one level of a topic",
                "payload: sparkplug, group: a | node",
                "payload: sparkplug, group: a, node: n, topic: t | its topics follow from group, node and device",
                "payload: sparkplug, group: a, node: n, gateway: g | its edge node is its gateway",
                "payload: sparkplug, group: a, node: n, time: /t | its payloads have a place for it",
                "payload: senml, topic: t, node: n | is of use with payload sparkplug only",
            })
    void a_wrong_sparkplug_sensor_is_refused_with_the_rule(String keys, String expected) {
        assertEquals(
                List.of(),
                sensor(String.join("\n", keys.split(", "))
                        + "\nreads:\n- {quantity: humidity, at: h, unit: \"%RH\"}\n"));
        assertEquals(1, sentences().size(), sentences()::toString);
        assertTrue(sentences().get(0).contains(expected), sentences()::toString);
    }
}
