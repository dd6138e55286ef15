package bagward.document;

import bagward.fault.Fault;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A mapping in a document, as its reader sees it. Each accessor checks one key: a missing or wrong value becomes a fault
 * with line, path, value and rule, and a harmless stand-in is returned so that reading goes on and all faults are
 * found. {@link #make} builds the result only if nothing was refused. Not shared by threads.
 */
public final class Section {
    private final String document;
    private final String path;
    private final Node.Mapping mapping;
    private final Inspection inspection;
    private final SortedSet<String> known = new TreeSet<>();

    Section(String document, String path, Node.Mapping mapping, Inspection inspection) {
        this.document = document;
        this.path = path;
        this.mapping = mapping;
        this.inspection = inspection;
    }

    /**
     * The top of a YAML document.
     *
     * @param name name of the document, for messages
     * @param text the document
     * @param inspection takes the faults
     * @return the top; an empty one if the text is no YAML or no mapping, which is then among the faults
     */
    public static Section parse(String name, String text, Inspection inspection) {
        Optional<Node> tree = new YamlTree(name, inspection).parse(text);
        Node.Mapping empty = new Node.Mapping(Map.of(), 1);
        if (tree.isPresent() && tree.get() instanceof Node.Mapping top) {
            return new Section(name, "", top, inspection);
        }
        tree.ifPresent(node -> inspection.refuse(
                Fault.of(name + " line " + node.line(), "", "the top must be a mapping of keys, not " + node.kind())));
        return new Section(name, "", empty, inspection);
    }

    /** The line it starts on, from 1. */
    public int line() {
        return mapping.line();
    }

    /** Whether the key is there with a value. */
    public boolean has(String key) {
        ask(key);
        Node node = mapping.entries().get(key);
        return node != null && !(node instanceof Node.Scalar s && s.text().isEmpty());
    }

    /** A required text; "" after a fault. */
    public String text(String key) {
        return findText(key).orElseGet(() -> missing(key, ""));
    }

    /** A text, or another if it is missing. */
    public String text(String key, String otherwise) {
        return findText(key).orElse(otherwise);
    }

    /** A text; empty if it is missing or, with a fault, no single value. */
    public Optional<String> findText(String key) {
        if (!has(key)) {
            return Optional.empty();
        }
        if (mapping.entries().get(key) instanceof Node.Scalar scalar) {
            return Optional.of(scalar.text());
        }
        refuse(key, "must be a single value");
        return Optional.empty();
    }

    /**
     * A required value of a type of its own.
     *
     * @param make makes it from the text; its {@link ImpossibleValueException} becomes the fault
     */
    public <T> Optional<T> value(String key, Function<String, T> make) {
        if (!has(key)) {
            return missing(key, Optional.empty());
        }
        return findValue(key, make);
    }

    /** The same, not required. */
    public <T> Optional<T> findValue(String key, Function<String, T> make) {
        return findText(key).flatMap(text -> {
            try {
                return Optional.of(make.apply(text));
            } catch (ImpossibleValueException e) {
                refuse(key, e.getMessage());
                return Optional.empty();
            }
        });
    }

    /**
     * A required number.
     *
     * @param low lowest allowed value
     * @param high highest allowed value
     * @param unit unit of all three, for messages
     * @return the number; {@code low} after a fault
     */
    public double number(String key, double low, double high, String unit) {
        return has(key) ? number(key, low, high, unit, low) : missing(key, low);
    }

    /** A number, or another if it is missing. */
    public double number(String key, double low, double high, String unit, double otherwise) {
        return Scalars.number(this, key, low, high, unit).orElse(otherwise);
    }

    /** A required whole number; {@code low} after a fault. */
    public int whole(String key, int low, int high, String unit) {
        return has(key) ? whole(key, low, high, unit, low) : missing(key, low);
    }

    /** A whole number, or another if it is missing. */
    public int whole(String key, int low, int high, String unit, int otherwise) {
        return Scalars.whole(this, key, low, high, unit).orElse(otherwise);
    }

    /** true or false, or another if it is missing. */
    public boolean flag(String key, boolean otherwise) {
        return choice(key, Map.of("true", true, "false", false), otherwise);
    }

    /** A required duration such as "90 s", "15 min", "12 h" or "7 d"; {@code low} after a fault. */
    public Duration duration(String key, Duration low, Duration high) {
        return has(key) ? duration(key, low, high, low) : missing(key, low);
    }

    /** A duration, or another if it is missing. */
    public Duration duration(String key, Duration low, Duration high, Duration otherwise) {
        return Scalars.duration(this, key, low, high).orElse(otherwise);
    }

    /** A required word out of a few; empty after a fault. */
    public <T> Optional<T> choice(String key, Map<String, T> words) {
        return has(key) ? Scalars.choice(this, key, words) : missing(key, Optional.empty());
    }

    /** A word out of a few, or another value if it is missing. */
    public <T> T choice(String key, Map<String, T> words, T otherwise) {
        return Scalars.choice(this, key, words).orElse(otherwise);
    }

    /** A required mapping; an empty one after a fault. */
    public Section section(String key) {
        return findSection(key).orElseGet(() -> {
            if (!has(key)) {
                missing(key, "");
            }
            return new Section(document, join(key), new Node.Mapping(Map.of(), line()), inspection);
        });
    }

    /** A mapping; empty if it is missing or, with a fault, something else. */
    public Optional<Section> findSection(String key) {
        if (!has(key)) {
            return Optional.empty();
        }
        if (mapping.entries().get(key) instanceof Node.Mapping below) {
            return Optional.of(new Section(document, join(key), below, inspection));
        }
        refuse(key, "must be a mapping of keys");
        return Optional.empty();
    }

    /** A list of mappings, of at least so many. */
    public List<Section> sections(String key, int atLeast) {
        List<Section> sections = new ArrayList<>();
        List<Node> items = items(key, atLeast);
        for (int i = 0; i < items.size(); i++) {
            String place = join(key) + "[" + i + "]";
            if (items.get(i) instanceof Node.Mapping below) {
                sections.add(new Section(document, place, below, inspection));
            } else {
                inspection.refuse(Fault.of(at(items.get(i).line(), place), "", "must be a mapping of keys"), place);
            }
        }
        return sections;
    }

    /** A list of single values, of at least so many. */
    public List<String> texts(String key, int atLeast) {
        List<String> texts = new ArrayList<>();
        List<Node> items = items(key, atLeast);
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof Node.Scalar scalar) {
                texts.add(scalar.text());
            } else {
                inspection.refuse(
                        Fault.of(at(items.get(i).line(), join(key) + "[" + i + "]"), "", "must be a single value"),
                        join(key));
            }
        }
        return texts;
    }

    /** All keys with single values, for mappings whose keys are names of the user. */
    public List<String> keys() {
        return List.copyOf(mapping.entries().keySet());
    }

    /** Notes that the value of a key breaks a rule. */
    public void refuse(String key, String rule) {
        refuse(key, rule, "");
    }

    /** Notes that the value of a key breaks a rule, and what to do. */
    public void refuse(String key, String rule, String remedy) {
        Node node = mapping.entries().get(key);
        String found = node instanceof Node.Scalar scalar ? scalar.text() : "";
        int line = node == null ? line() : node.line();
        inspection.refuse(new Fault(at(line, join(key)), found, rule, remedy), join(key));
    }

    /**
     * Ends the reading of this section: keys that nobody asked for are faults, then the result is built.
     *
     * @return the result; empty if anything in this section was refused
     */
    public <T> Optional<T> make(Supplier<T> build) {
        refuseUnknownKeys();
        if (inspection.refusedWithin(path)) {
            return Optional.empty();
        }
        try {
            return Optional.of(build.get());
        } catch (ImpossibleValueException e) {
            inspection.refuse(Fault.of(at(line(), path), "", e.getMessage()), path);
            return Optional.empty();
        }
    }

    private void refuseUnknownKeys() {
        mapping.entries().forEach((key, node) -> {
            if (!known.contains(key)) {
                String near = Nearest.of(key, known)
                        .map(k -> "Did you mean '" + k + "'?")
                        .orElse("Known here: " + String.join(", ", known) + ".");
                inspection.refuse(
                        new Fault(at(node.line(), join(key)), key, "this key is not known here", near), join(key));
            }
        });
    }

    private List<Node> items(String key, int atLeast) {
        List<Node> items = List.of();
        if (has(key)) {
            if (!(mapping.entries().get(key) instanceof Node.Sequence list)) {
                refuse(key, "must be a list");
                return items;
            }
            items = list.items();
        }
        if (items.size() < atLeast) {
            refuse(key, "must be a list of at least " + atLeast);
        }
        return items;
    }

    private <T> T missing(String key, T standIn) {
        inspection.refuse(Fault.of(at(line(), join(key)), "", "this is required and missing"), join(key));
        return standIn;
    }

    private void ask(String key) {
        known.add(key);
        inspection.ask(path, key);
    }

    private String join(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private String at(int line, String place) {
        return document + " line " + line + (place.isEmpty() ? "" : ", " + place);
    }
}
