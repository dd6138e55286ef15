package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.RuleId;
import bagward.bag.MaterialId;
import bagward.climate.WetnessRule;
import bagward.document.Inspection;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.store.influx.InfluxSettings;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ConfigurationReaderTest {
    private final ConfigurationReader reader = new ConfigurationReader(Path.of("/srv/station"), Map.of());
    private final String example = Packaged.text("config/bagward.yaml");

    /** The example with all that it offers switched on. */
    private static String switchedOn(String text) {
        return text.replaceAll("(?m)^#~ ?", "");
    }

    private static final Map<String, String> SECRETS = Map.of(
            "BAGWARD_MAIL_PASSWORD", "hunter2",
            "BAGWARD_GATEWAY_SECRET", "MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw",
            "BAGWARD_PING_URL", "https://ping.example.org/abc");

    private List<String> faultsOf(String text) {
        return assertThrows(RefusedInputException.class, () -> reader.read("bagward.yaml", text, new Inspection()))
                .faults()
                .stream()
                .map(Fault::sentence)
                .toList();
    }

    @Test
    void the_commented_example_is_sound() {
        Configuration read = reader.read("bagward.yaml", example, new Inspection());
        assertEquals("Alder Bank", read.station().name());
        assertEquals(6, read.station().sensors().size());
        assertEquals(1, read.station().drying().size());
        assertEquals(Path.of("/srv/station/bagward-data"), read.store().folder());
        assertTrue(read.materials().containsKey(new MaterialId("film-house")));
        assertTrue(read.materials().size() > 3, "the materials of the seeds are there too");
        assertTrue(read.rules().stream().anyMatch(r -> r.id().equals(new RuleId("sensor-silent-long"))));
    }

    @Test
    void the_example_is_sound_with_deliveries_switched_on_and_shows_no_secret() {
        Configuration read = new ConfigurationReader(Path.of("/srv/station"), SECRETS)
                .read("bagward.yaml", switchedOn(example), new Inspection());
        assertEquals(3, read.deliveries().channels().size());
        assertEquals(
                List.of("Ruth"),
                read.deliveries().plan().people().stream()
                        .map(bagward.message.Person::name)
                        .toList());
        SECRETS.values()
                .forEach(secret ->
                        assertFalse(read.deliveries().channels().toString().contains(secret)));
    }

    @Test
    void deliveries_without_their_secrets_or_their_server_are_refused() {
        List<String> faults = faultsOf(switchedOn(example).replaceAll("security: starttls", "security: none"));
        assertEquals(4, faults.size(), faults::toString);
        assertTrue(faults.get(1).contains("must name an environment variable that is set"), faults::toString);
        assertTrue(
                faults.stream()
                        .anyMatch(f -> f.contains("must be starttls or tls unless the server is on this machine")),
                faults::toString);
        List<String> serverless = faultsOf(switchedOn(example).replace("  mail:\n", "  post:\n"));
        assertTrue(serverless.stream().anyMatch(f -> f.contains("needs a mail server")), serverless::toString);
    }

    @Test
    void every_fault_of_the_file_comes_in_one_report() {
        String wrong = example.replace("latitude: 53.2 ", "latitude: 153.2 ")
                .replace("time-zone: Europe/Dublin", "timezone: Europe/Dublin")
                .replace("bay: b  ", "bay: z  ")
                .replace("port: 8420", "port: eighty");
        List<String> faults = faultsOf(wrong);
        assertTrue(
                faults.get(0).contains("station.latitude: found '153.2'; must be a number from -90 to 90"),
                faults::toString);
        assertTrue(faults.stream().anyMatch(f -> f.contains("Did you mean 'time-zone'?")), faults::toString);
        assertTrue(faults.stream().anyMatch(f -> f.contains(".bay: found 'z'")), faults::toString);
        assertTrue(faults.stream().anyMatch(f -> f.contains("page.port: found 'eighty'")), faults::toString);
    }

    @Test
    void a_password_is_taken_from_the_environment_or_missed() {
        String open = example.replace(
                "host: 127.0.0.1                   # this machine only; 0.0.0.0 for sensors",
                "host: 0.0.0.0  # sensors");
        assertTrue(
                faultsOf(open).get(0).contains("must be this machine only (127.0.0.1) unless clients need a password"),
                () -> faultsOf(open).toString());
    }

    @Test
    void the_schema_has_exactly_the_keys_that_are_read() throws IOException {
        Map<String, Set<String>> read = new TreeMap<>();
        for (String text : List.of(
                example,
                switchedOn(example),
                example.replace(
                        "  host: 127.0.0.1                   # this machine only; " + "0.0.0.0 for sensors",
                        "  url: mqtt://broker.example:1883  # sensors"),
                dewPoint(example),
                example.replace("  # influxdb:\n  #   url:", "  influxdb:\n    url:"))) {
            Inspection inspection = new Inspection();
            readIgnoringFaults(text, inspection);
            inspection.asked().forEach((path, keys) -> read.merge(path, keys, ConfigurationReaderTest::union));
        }
        JsonNode schema = schema();
        read.forEach((path, keys) -> {
            Set<String> known = new TreeSet<>();
            at(schema, path).path("properties").fieldNames().forEachRemaining(known::add);
            assertEquals(keys, known, () -> "keys at '" + path + "'");
        });
    }

    private void readIgnoringFaults(String text, Inspection inspection) {
        try {
            reader.read("bagward.yaml", text, inspection);
        } catch (RefusedInputException onlyTheKeysMatterHere) {
            assertFalse(onlyTheKeysMatterHere.faults().isEmpty());
        }
    }

    @Test
    void the_foliage_of_a_house_is_wet_by_humidity_or_by_dew_point() {
        assertEquals(
                new WetnessRule.HumidityLimit(92, 88),
                reader.read("bagward.yaml", example.replace("wet-from: 90", "wet-from: 92"), new Inspection())
                        .foliage());
        assertEquals(
                new WetnessRule.DewPointDepression(1.5, 3.8),
                reader.read("bagward.yaml", dewPoint(example), new Inspection()).foliage());
        List<String> faults = faultsOf(example.replace("dry-below: 88", "dry-below: 95"));
        assertTrue(faults.get(0).contains("dry must end at or below the start of wet"), faults::toString);
    }

    private static String dewPoint(String text) {
        return text.replaceAll("(?s)told-by: humidity.*?dry-below: 88[^\n]*", "told-by: dew-point\n  wet-up-to: 1.5");
    }

    @Test
    void readings_can_be_kept_in_influxdb() {
        String text = example.replace("  # influxdb:\n  #   url:", "  influxdb:\n    url:")
                .replace("  #   database:", "    database:");
        Configuration read = reader.read("bagward.yaml", text, new Inspection());
        InfluxSettings influx = read.store().influx().orElseThrow();
        assertEquals("https://influx.example:8086", influx.url());
        assertEquals("bagward", influx.database());
        assertEquals(
                Optional.empty(),
                reader.read("bagward.yaml", example, new Inspection()).store().influx());
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> both = new TreeSet<>(one);
        both.addAll(other);
        return both;
    }

    @Test
    void the_example_passes_the_schema_and_a_wrong_one_does_not() throws IOException {
        ObjectMapper yaml = new ObjectMapper(new YAMLFactory());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema());
        assertEquals(List.of(), schema.validate(yaml.readTree(example)));
        assertEquals(List.of(), schema.validate(yaml.readTree(switchedOn(example))));
        String wrong = example.replace("latitude: 53.2 ", "latitude: 153.2 ").replace("payload: senml", "payload: xml");
        assertEquals(2, schema.validate(yaml.readTree(wrong)).size());
    }

    private static JsonNode schema() throws IOException {
        return new ObjectMapper().readTree(Packaged.text("config/bagward.schema.json"));
    }

    private static JsonNode at(JsonNode schema, String path) {
        JsonNode node = schema;
        for (String part : path.isEmpty() ? new String[0] : path.split("\\.")) {
            String key = part.replace("[]", "");
            node = node.path("properties").path(key);
            node = part.endsWith("[]") ? node.path("items") : node;
        }
        return node;
    }
}
