package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.StoreException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.influxdb.dto.QueryResult;

/**
 * Finds what is stored at the times of a batch. It remembers the newest time of each series, so that what is newer, as
 * nearly all is, costs no question. That holds as long as nobody else writes. Used by one thread at a time.
 */
final class Lookup {
    private final InfluxLink link;
    private final Statements statements;
    private final Map<SeriesId, Instant> newest = new HashMap<>();

    Lookup(InfluxLink link, Statements statements) {
        this.link = link;
        this.statements = statements;
    }

    /** What is stored at the times of a batch; there may be more in the answer. */
    Map<Slot, Reading> held(List<Reading> batch) {
        Map<String, SeriesId> names = new HashMap<>();
        Set<Slot> late = new HashSet<>();
        for (Reading reading : batch) {
            names.put(reading.series().toString(), reading.series());
            if (!reading.measuredAt().isAfter(newest(reading.series()))) {
                late.add(Slot.of(reading));
            }
        }
        Map<Slot, Reading> held = new HashMap<>();
        for (Stretch stretch : Stretch.covering(late)) {
            lookPiecewise(stretch, names).forEach(reading -> held.put(Slot.of(reading), reading));
        }
        return held;
    }

    /** Notes what is about to be written; also if that then fails, since it may have been written all the same. */
    void willWrite(List<Reading> batch) {
        for (Reading reading : batch) {
            newest.merge(reading.series(), reading.measuredAt(), (a, b) -> a.isAfter(b) ? a : b);
        }
    }

    private Instant newest(SeriesId series) {
        Instant known = newest.get(series);
        if (known != null) {
            return known;
        }
        Instant found = link.ask("looking for the newest of " + series, statements.newest(series, Instant.MAX)).stream()
                .flatMap(answer -> Rows.of(series, answer).stream())
                .map(Reading::measuredAt)
                .findFirst()
                .orElse(Instant.MIN);
        newest.put(series, found);
        return found;
    }

    /** Where readings lie so dense that one answer would be too long, there are several. */
    private List<Reading> lookPiecewise(Stretch stretch, Map<String, SeriesId> names) {
        try {
            return look(stretch, names);
        } catch (StoreException e) {
            if (!InfluxTrouble.tooLong(e) || stretch.isInstant()) {
                throw e;
            }
        }
        List<Reading> found = new ArrayList<>();
        stretch.halves().forEach(half -> found.addAll(lookPiecewise(half, names)));
        return found;
    }

    private List<Reading> look(Stretch stretch, Map<String, SeriesId> names) {
        List<Reading> found = new ArrayList<>();
        String what = "looking for readings from " + stretch.first() + " to " + stretch.last();
        for (QueryResult.Series answer :
                link.ask(what, statements.between(stretch.sensors(), stretch.first(), stretch.last()))) {
            Map<String, String> tags = Optional.ofNullable(answer.getTags()).orElse(Map.of());
            SeriesId series = names.get(tags.get("sensor") + "/" + tags.get("quantity"));
            if (series != null) {
                found.addAll(Rows.of(series, answer));
            }
        }
        return found;
    }
}
