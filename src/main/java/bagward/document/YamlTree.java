package bagward.document;

import bagward.fault.Fault;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds the located tree of one YAML document. */
final class YamlTree {
    private static final int DEEPEST = 20;

    private final String name;
    private final Inspection inspection;

    YamlTree(String name, Inspection inspection) {
        this.name = name;
        this.inspection = inspection;
    }

    /** The tree; empty after a fault that leaves nothing to read. */
    Optional<Node> parse(String text) {
        try (YAMLParser parser = new YAMLFactory().createParser(text)) {
            if (parser.nextToken() == null) {
                inspection.refuse(Fault.of(name, "", "the file is empty"));
                return Optional.empty();
            }
            return Optional.of(node(parser, 0));
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            inspection.refuse(new Fault(
                    name + " line " + line,
                    "",
                    "this is not YAML: " + firstLine(e.getOriginalMessage()),
                    "Check indentation, quotes and colons there."));
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    private Node node(YAMLParser parser, int depth) throws IOException {
        int line = line(parser);
        if (depth > DEEPEST) {
            inspection.refuse(
                    Fault.of(name + " line " + line, "", "values may be nested " + DEEPEST + " deep at most"));
            parser.skipChildren();
            return new Node.Scalar("", line);
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(parser, line, depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return sequence(parser, line, depth);
        }
        if (parser.isCurrentAlias()) {
            inspection.refuse(Fault.of(
                    name + " line " + line, "*" + parser.getText(), "aliases are not read: write the value out"));
        }
        return new Node.Scalar(token == JsonToken.VALUE_NULL ? "" : parser.getText(), line);
    }

    private Node mapping(YAMLParser parser, int line, int depth) throws IOException {
        Map<String, Node> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            int keyLine = line(parser);
            parser.nextToken();
            Node value = node(parser, depth + 1);
            if (entries.putIfAbsent(key, value) != null) {
                inspection.refuse(
                        Fault.of(name + " line " + keyLine, key, "this key stands twice here: keep one of them"));
            }
        }
        return new Node.Mapping(entries, line);
    }

    private Node sequence(YAMLParser parser, int line, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(parser, depth + 1));
        }
        return new Node.Sequence(items, line);
    }

    private static int line(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("unreadable").strip();
    }
}
