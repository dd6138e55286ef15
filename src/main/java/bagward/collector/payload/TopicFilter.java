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
