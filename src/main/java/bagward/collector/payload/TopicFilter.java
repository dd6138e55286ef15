package bagward.collector.payload;

import bagward.fault.ImpossibleValueException;
import java.nio.charset.StandardCharsets;

/**
 * A topic filter as in MQTT 3.1.1 section 4.7: levels parted by '/', '+' for one level, '#' for all the rest.
 *
 * @param text the filter as it is written
 */
public record TopicFilter(String text) {
    private static final int LONGEST_BYTES = 65_535;

    /** Refuses what a broker would refuse. */
    public TopicFilter {
        if (!isOne(text)) {
            throw new ImpossibleValueException(
                    "topic filter '" + text + "' is not allowed: levels parted by '/', '+' only"
                            + " as a whole level, '#' only as the last (MQTT 3.1.1 section 4.7.1)");
        }
    }

    /** Whether a text is a topic filter. */
    public static boolean isOne(String text) {
        if (text.isEmpty() || text.indexOf('\0') >= 0 || text.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
            return false;
        }
        String[] levels = text.split("/", -1);
        for (int i = 0; i < levels.length; i++) {
            boolean hash = levels[i].indexOf('#') >= 0;
            boolean wildcard = hash || levels[i].indexOf('+') >= 0;
            boolean misplaced = hash && i < levels.length - 1;
            if (misplaced || (wildcard && levels[i].length() > 1)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a topic fits. A filter that begins with a wildcard fits no topic that begins with '$'. */
    public boolean matches(String topic) {
        if (topic.startsWith("$") && !text.startsWith("$")) {
            return false;
        }
        return covers(text.split("/", -1), topic.split("/", -1));
    }

    /** Whether every topic that fits the other filter fits this one too. */
    public boolean covers(TopicFilter other) {
        if (other.text.startsWith("$") != text.startsWith("$")) {
            return false;
        }
        return covers(text.split("/", -1), other.text.split("/", -1));
    }

    /** Whether there can be a topic that fits both filters. */
    public boolean overlaps(TopicFilter other) {
        if (isLiteral() && other.isLiteral()) {
            return text.equals(other.text);
        }
        if (text.startsWith("$") != other.text.startsWith("$")) {
            return false;
        }
        return overlap(text.split("/", -1), other.text.split("/", -1));
    }

    /** Whether it is a topic, without wildcards. */
    public boolean isLiteral() {
        return text.indexOf('+') < 0 && text.indexOf('#') < 0;
    }

    private static boolean overlap(String[] one, String[] other) {
        for (int i = 0; ; i++) {
            if (ends(one, i) || ends(other, i)) {
                return true;
            }
            if (i == one.length || i == other.length) {
                return one.length == other.length;
            }
            boolean free = one[i].equals("+") || other[i].equals("+");
            if (!free && !one[i].equals(other[i])) {
                return false;
            }
        }
    }

    /** Whether all further levels fit, none included. */
    private static boolean ends(String[] levels, int at) {
        return at < levels.length && levels[at].equals("#");
    }

    private static boolean covers(String[] filter, String[] levels) {
        int i = 0;
        for (; i < filter.length; i++) {
            if (filter[i].equals("#")) {
                return true;
            }
            if (i >= levels.length || levels[i].equals("#")) {
                return false;
            }
            if (!filter[i].equals("+") && !filter[i].equals(levels[i])) {
                return false;
            }
        }
        return i == levels.length;
    }
}
