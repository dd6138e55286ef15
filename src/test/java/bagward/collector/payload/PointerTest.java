package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PointerTest {
    @Test
    void the_pointers_of_the_standard_find_its_values() throws IOException {
        JsonNode vectors = Vectors.read("json-pointer-vectors.json");
        assertEquals(12, vectors.get("found").size());
        for (JsonNode pair : vectors.get("found")) {
            String pointer = pair.get(0).textValue();
            assertEquals(Optional.of(pair.get(1)), Pointer.of(pointer).in(vectors.get("document")), pointer);
        }
    }

    @Test
    void texts_that_are_no_pointers_are_refused() throws IOException {
        for (JsonNode text : Vectors.read("json-pointer-vectors.json").get("not_pointers")) {
            assertFalse(JsonAt.isPointer(text.textValue()), text.textValue());
            assertThrows(IllegalArgumentException.class, () -> Pointer.of(text.textValue()));
        }
    }

    @Test
    void pointers_to_nothing_find_nothing() throws IOException {
        JsonNode vectors = Vectors.read("json-pointer-vectors.json");
        for (JsonNode text : vectors.get("nothing_there")) {
            assertEquals(Optional.empty(), Pointer.of(text.textValue()).in(vectors.get("document")), text.textValue());
        }
    }

    @Test
    void the_escape_of_a_tilde_before_a_one_stays_a_tilde_and_a_one() throws IOException {
        JsonNode document = new ObjectMapper().readTree("{\"~1\": 7, \"/\": 8}");
        assertEquals(7, Pointer.of("/~01").in(document).orElseThrow().intValue());
        assertEquals(8, Pointer.of("/~1").in(document).orElseThrow().intValue());
    }
}
