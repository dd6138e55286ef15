package bagward.store.influx;

import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The InfluxQL statements. Values stand in them as quoted literals, since bound parameters are not understood by all
 * versions of the server; a sensor name cannot hold a quote, and is quoted all the same.
 */
final class Statements {
    /** The measurement (table) of all readings. */
    static final String MEASUREMENT = "reading";

    private static final String SELECT = "SELECT value, flags FROM ";
    private static final int MOST_NAMES = 50;

    /** Between these lie all times that InfluxDB knows (signed 64 bit ns since 1970). */
    private static final Instant FIRST = Instant.parse("1677-09-22T00:00:00Z");

    private static final Instant LAST = Instant.parse("2262-04-11T00:00:00Z");

    private final String from;

    Statements(Optional<String> retentionPolicy) {
        this.from = retentionPolicy.map(rp -> name(rp) + ".").orElse("") + name(MEASUREMENT);
    }

    /** Makes a database. */
    static String create(String database) {
        return "CREATE DATABASE " + name(database);
    }

    /** The retention policies of a database. */
    static String policies(String database) {
        return "SHOW RETENTION POLICIES ON " + name(database);
    }

    /** The names and types of the fields. */
    String fields() {
        return "SHOW FIELD KEYS FROM " + from;
    }

    /** Times of the oldest readings before an instant. */
    String oldest(Instant before, int most) {
        return "SELECT value FROM " + from + " WHERE time < " + time(before) + " LIMIT " + most;
    }

    /** Deletes the readings before an instant; the statement takes no retention policy. */
    static String delete(Instant before) {
        return "DELETE FROM " + name(MEASUREMENT) + " WHERE time < " + time(before);
    }

    /** Whether InfluxDB can keep a time. */
    static boolean keeps(Instant time) {
        return !time.isBefore(FIRST) && time.isBefore(LAST);
    }

    /** The first readings of a series in [start, end), oldest first. */
    String page(SeriesId series, Instant start, Instant end, int most) {
        return SELECT + from + where(series) + (start.isBefore(FIRST) ? "" : " AND time >= " + time(start))
                + (end.isBefore(LAST) ? " AND time < " + time(end) : "") + " LIMIT " + most;
    }

    /** The newest reading of a series at or before an instant. */
    String newest(SeriesId series, Instant atOrBefore) {
        return SELECT + from + where(series) + (atOrBefore.isBefore(LAST) ? " AND time <= " + time(atOrBefore) : "")
                + " ORDER BY time DESC LIMIT 1";
    }

    /** The readings of some sensors, or of more, in [first, last]; each series by itself. */
    String between(Collection<SensorId> sensors, Instant first, Instant last) {
        String some = sensors.size() > MOST_NAMES
                ? ""
                : sensors.stream()
                        .map(s -> "sensor = " + text(s.value()))
                        .collect(Collectors.joining(" OR ", " AND (", ")"));
        return SELECT + from + " WHERE time >= " + time(first) + " AND time <= " + time(last) + some
                + " GROUP BY sensor, quantity";
    }

    private static String where(SeriesId series) {
        return " WHERE sensor = " + text(series.sensor().value()) + " AND quantity = "
                + text(series.quantity().word());
    }

    private static String time(Instant instant) {
        return "'" + instant + "'";
    }

    private static String text(String value) {
        return "'" + value.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    private static String name(String value) {
        return "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
