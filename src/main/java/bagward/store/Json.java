package bagward.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;

/**
 * Documents that are kept as JSON text. Each names its {@code kind} and {@code version}, so that a later program can
 * tell what it reads; fields are mapped one by one, never by the names of classes.
 */
final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final int VERSION = 1;

    private Json() {}

    /** A new document. */
    static ObjectNode document(String kind) {
        return object().put("kind", kind).put("version", VERSION);
    }

    /** A new part of a document. */
    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** The document of a stored text. */
    static JsonNode parse(String text) {
        try {
            JsonNode document = MAPPER.readTree(text);
            if (document.path("version").asInt() != VERSION) {
                throw new StoreException(
                        "the store holds a document of an unknown version: use a newer Bagward (" + text + ")");
            }
            return document;
        } catch (JsonProcessingException e) {
            throw new StoreException("the store holds a damaged document: restore it from a backup (" + text + ")", e);
        }
    }

    /** A text field. */
    static String text(JsonNode document, String field) {
        JsonNode value = document.get(field);
        if (value == null || !value.isTextual()) {
            throw new StoreException(
                    "the store holds a document without '" + field + "': restore it from a backup (" + document + ")");
        }
        return value.textValue();
    }

    /** A field with a number. */
    static double number(JsonNode document, String field) {
        JsonNode value = document.get(field);
        if (value == null || !value.isNumber()) {
            throw new StoreException("the store holds a document without a number in '" + field
                    + "': restore it from a backup (" + document + ")");
        }
        return value.doubleValue();
    }

    /** A field with a time. */
    static Instant instant(JsonNode document, String field) {
        try {
            return Instant.parse(text(document, field));
        } catch (DateTimeParseException e) {
            throw new StoreException(
                    "the store holds a document without a time in '" + field + "': restore it from a backup ("
                            + document + ")",
                    e);
        }
    }

    /** A field that may be missing. */
    static <T> Optional<T> optional(JsonNode document, String field, Function<String, T> reading) {
        return document.has(field) ? Optional.of(reading.apply(text(document, field))) : Optional.empty();
    }
}
