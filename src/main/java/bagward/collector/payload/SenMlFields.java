package bagward.collector.payload;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Typed access to the fields of one SenML record (RFC 8428 section 4, table 1). */
final class SenMlFields {
    private static final Set<String> KNOWN =
            Set.of("bn", "bt", "bu", "bv", "bs", "bver", "n", "u", "v", "vs", "vb", "vd", "s", "t", "ut");

    private final JsonNode object;
    private final String where;

    /**
     * @param number position in the pack, from 1, for messages
     * @throws RefusedPayloadException if it is not an object, or has a field that must be understood and is not
     */
    SenMlFields(JsonNode object, int number) {
        this.where = "SenML record " + number;
        if (!object.isObject()) {
            throw new RefusedPayloadException(where + " is not a JSON object (RFC 8428 section 5)");
        }
        this.object = object;
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (name.endsWith("_") && !KNOWN.contains(name)) {
                throw refusal("has the field " + Texts.quoted(name) + " that must be understood and is not", "4.4");
            }
        }
    }

    boolean has(String field) {
        return object.has(field);
    }

    OptionalDouble number(String field) {
        JsonNode node = object.get(field);
        if (node == null) {
            return OptionalDouble.empty();
        }
        if (!node.isNumber()) {
            throw refusal("has a field '" + field + "' that is not a number", "4.3");
        }
        return OptionalDouble.of(Numbers.finite(node.doubleValue()));
    }

    Optional<String> text(String field) {
        JsonNode node = object.get(field);
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isTextual()) {
            throw refusal("has a field '" + field + "' that is not a text", "4.3");
        }
        return Optional.of(node.textValue());
    }

    boolean truth(String field) {
        JsonNode node = object.path(field);
        if (!node.isBoolean()) {
            throw refusal("has a field '" + field + "' that is neither true nor false", "4.3");
        }
        return node.booleanValue();
    }

    Optional<Integer> version() {
        JsonNode node = object.get("bver");
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isIntegralNumber() || !node.canConvertToInt() || node.intValue() <= 0) {
            throw refusal("has a 'bver' that is not a positive whole number", "4.4");
        }
        return Optional.of(node.intValue());
    }

    RefusedPayloadException refusal(String what, String section) {
        return new RefusedPayloadException(where + " " + what + " (RFC 8428 section " + section + ")");
    }
}
