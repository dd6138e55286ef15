package bagward.collector;

import bagward.document.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the columns of a recorded file become messages.
 *
 * @param timeColumn column with the time, ISO 8601 with an offset
 * @param tracks what is sent for each row, in this order
 */
public record ReplayPlan(String timeColumn, List<Track> tracks) {
    /** Copies the list. */
    public ReplayPlan {
        tracks = List.copyOf(tracks);
    }

    /**
     * One message for each row: a JSON object with the member {@code time} (ISO 8601, UTC) and a number for each column that
     * is not empty; none where all are empty.
     *
     * @param topic the topic it is sent on
     * @param columns name of the member by name of the column
     */
    public record Track(String topic, Map<String, String> columns) {
        /** Copies the map, keeping its order. */
        public Track {
            columns = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        }
    }

    /**
     * Reads a plan from a document: {@code time} (name of the time column) and the list {@code tracks} of {@code topic} and
     * {@code columns}, a mapping of the file's columns to names in the message.
     *
     * @return empty if anything was refused
     */
    public static Optional<ReplayPlan> read(Section top) {
        String time = top.text("time");
        List<Track> tracks = new ArrayList<>();
        for (Section entry : top.sections("tracks", 1)) {
            track(entry).ifPresent(tracks::add);
        }
        return top.make(() -> new ReplayPlan(time, tracks));
    }

    private static Optional<Track> track(Section entry) {
        String topic = entry.text("topic");
        if (topic.indexOf('+') >= 0 || topic.indexOf('#') >= 0) {
            entry.refuse("topic", "must be one topic, without + and #");
        }
        Section columns = entry.section("columns");
        Map<String, String> names = new LinkedHashMap<>();
        columns.keys().forEach(column -> names.put(column, columns.text(column)));
        columns.make(() -> names);
        return entry.make(() -> new Track(topic, names));
    }
}
