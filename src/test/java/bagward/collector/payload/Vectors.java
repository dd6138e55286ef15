package bagward.collector.payload;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;

/** Check values that lie beside the tests. */
final class Vectors {
    private Vectors() {}

    static JsonNode read(String name) throws IOException {
        try (InputStream file = Objects.requireNonNull(Vectors.class.getResourceAsStream("/collector/" + name), name)) {
            return new ObjectMapper().readTree(file);
        }
    }
}
