package bagward.collector.payload;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A JSON Pointer, exactly as in RFC 6901 (2013) sections 3 and 4.
 *
 * @param tokens its reference tokens, unescaped; none for the whole document
 */
record Pointer(List<String> tokens) {
    private static final Pattern FORM = Pattern.compile("(/([^/~]|~[01])*)*");
    private static final Pattern INDEX = Pattern.compile("0|[1-9][0-9]{0,8}");

    Pointer {
        tokens = List.copyOf(tokens);
    }

    /** Whether a text is a JSON Pointer: empty, or '/' before each token, with '~' only as ~0 or ~1. */
    static boolean isOne(String text) {
        return FORM.matcher(text).matches();
    }

    /** @throws IllegalArgumentException if {@link #isOne} says no; the configuration is checked before */
    static Pointer of(String text) {
        if (!isOne(text)) {
            throw new IllegalArgumentException("'" + text + "' is not a JSON Pointer (RFC 6901)");
        }
        List<String> tokens = new ArrayList<>();
        if (!text.isEmpty()) {
            for (String token : text.substring(1).split("/", -1)) {
                // ~1 first: "~01" has to become "~1", not "/"
                tokens.add(token.replace("~1", "/").replace("~0", "~"));
            }
        }
        return new Pointer(tokens);
    }

    /** What it points at; empty if there is nothing. */
    Optional<JsonNode> in(JsonNode document) {
        JsonNode here = document;
        for (String token : tokens) {
            Optional<JsonNode> next = step(here, token);
            if (next.isEmpty()) {
                return next;
            }
            here = next.get();
        }
        return Optional.of(here);
    }

    private static Optional<JsonNode> step(JsonNode node, String token) {
        if (node.isArray()) {
            return INDEX.matcher(token).matches()
                    ? Optional.ofNullable(node.get(Integer.parseInt(token)))
                    : Optional.empty();
        }
        return Optional.ofNullable(node.get(token));
    }
}
