package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.RuleId;
import bagward.bag.MaterialId;
import bagward.document.Inspection;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ConfigurationReaderTest {
    private final ConfigurationReader reader = new ConfigurationReader(Path.of("/srv/station"), Map.of());
    private final String example = Packaged.text("config/bagward.yaml");

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
        assertEquals(4, read.station().sensors().size());
        assertEquals(Path.of("/srv/station/bagward-data"), read.storeFolder());
        assertTrue(read.materials().containsKey(new MaterialId("film-house")));
        assertTrue(read.materials().size() > 3, "the materials of the seeds are there too");
        assertTrue(read.rules().stream().anyMatch(r -> r.id().equals(new RuleId("sensor-silent-long"))));
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
    void the_schema_knows_exactly_the_keys_that_are_read() throws IOException {
        Inspection inspection = new Inspection();
        reader.read("bagward.yaml", example, inspection);
        JsonNode schema = new ObjectMapper().readTree(Packaged.text("config/bagward.schema.json"));
        inspection.asked().forEach((path, keys) -> {
            NavigableSet<String> known = new TreeSet<>();
            at(schema, path).path("properties").fieldNames().forEachRemaining(known::add);
            assertTrue(
                    known.containsAll(keys),
                    () -> "the schema lacks keys at '" + path + "': read are " + keys + ", known " + known);
        });
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
