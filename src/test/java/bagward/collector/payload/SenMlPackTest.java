package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.collector.payload.SenMlRecord.Value;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class SenMlPackTest {
    @TestFactory
    Stream<DynamicTest> the_examples_of_the_standard_resolve_to_its_numbers() throws IOException {
        return each("examples");
    }

    @TestFactory
    Stream<DynamicTest> the_rules_of_the_standard_hold() throws IOException {
        return each("rules");
    }

    private static Stream<DynamicTest> each(String list) throws IOException {
        JsonNode vectors = Vectors.read("senml-vectors.json");
        Instant now = Instant.ofEpochSecond(vectors.get("now").longValue());
        return StreamSupport.stream(vectors.get(list).spliterator(), false)
                .map(v -> DynamicTest.dynamicTest(v.get("section").textValue(), () -> check(v, now)));
    }

    private static void check(JsonNode vector, Instant now) {
        if (vector.has("refused")) {
            String reason = assertThrows(
                            RefusedPayloadException.class, () -> SenMlPack.resolve(vector.get("pack"), now))
                    .getMessage();
            assertTrue(reason.contains(vector.get("refused").textValue()), reason);
            return;
        }
        List<SenMlRecord> records = SenMlPack.resolve(vector.get("pack"), now);
        assertEquals(vector.get("resolved").size(), records.size());
        for (int i = 0; i < records.size(); i++) {
            same(vector.get("resolved").get(i), records.get(i));
            assertEquals(vector.path("version").asInt(10), records.get(i).version());
        }
    }

    private static void same(JsonNode expected, SenMlRecord actual) {
        assertEquals(expected.get("n").textValue(), actual.name());
        assertEquals(expected.path("u").asText(""), actual.unit().orElse(""));
        assertEquals(
                Math.round(expected.get("t").doubleValue() * 1000),
                actual.time().toEpochMilli());
        assertEquals(expected.path("s").asDouble(Double.NaN), actual.sum().orElse(Double.NaN));
        assertEquals(expectedValue(expected), actual.value());
    }

    private static Value expectedValue(JsonNode expected) {
        if (expected.has("v")) {
            return new Value.Numeric(expected.get("v").doubleValue());
        }
        if (expected.has("vs")) {
            return new Value.Text(expected.get("vs").textValue());
        }
        if (expected.has("vb")) {
            return new Value.Truth(expected.get("vb").booleanValue());
        }
        return expected.has("vd") ? new Value.Data(expected.get("vd").textValue()) : new Value.SumOnly();
    }
}
