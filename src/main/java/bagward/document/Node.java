package bagward.document;

import java.util.List;
import java.util.Map;

/** A value in a document with the line it starts on, counted from 1. */
sealed interface Node {
    int line();

    /** What the node is, for messages. */
    String kind();

    /** A single value; empty text for null. */
    record Scalar(String text, int line) implements Node {
        @Override
        public String kind() {
            return "a single value";
        }
    }

    /** A list. */
    record Sequence(List<Node> items, int line) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** Keys with values, in the order of the document. */
    record Mapping(Map<String, Node> entries, int line) implements Node {
        @Override
        public String kind() {
            return "a mapping of keys";
        }
    }
}
