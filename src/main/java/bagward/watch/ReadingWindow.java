package bagward.watch;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.station.Station;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The readings since the start of the window in memory, so that a board costs no disk. It answers as the store does for
 * every range from the start of the window on, whatever the order in which readings came. Safe for use by several
 * threads. A reading takes about 60 bytes.
 */
final class ReadingWindow implements ReadingSource {
    private final Map<SeriesId, SeriesWindow> series = new ConcurrentHashMap<>();
    private Instant start;

    /** An empty window. */
    ReadingWindow(Instant start) {
        this.start = start;
    }

    /** The window of a store: every reading of the station's sensors since {@code start}, and the one before it. */
    static ReadingWindow of(Station station, ReadingSource store, Instant start) {
        ReadingWindow window = new ReadingWindow(start);
        for (Sensor sensor : station.sensors()) {
            for (SeriesId id : sensor.series()) {
                store.newest(id, start).ifPresent(before -> window.add(List.of(before)));
                window.add(store.readings(id, start, Instant.MAX));
            }
        }
        return window;
    }

    /** Adds readings that are in the store. */
    void add(List<Reading> readings) {
        for (Reading reading : readings) {
            series.computeIfAbsent(reading.series(), id -> new SeriesWindow()).add(reading);
        }
    }

    /** Moves the start of the window on; it never moves back. */
    synchronized void forgetBefore(Instant newStart) {
        if (newStart.isAfter(start)) {
            start = newStart;
        }
        series.values().forEach(one -> one.forgetBefore(start));
    }

    @Override
    public List<Reading> readings(SeriesId id, Instant from, Instant to) {
        return Optional.ofNullable(series.get(id))
                .map(one -> one.between(from, to))
                .orElse(List.of());
    }

    @Override
    public Optional<Reading> newest(SeriesId id, Instant atOrBefore) {
        return Optional.ofNullable(series.get(id)).flatMap(one -> one.newest(atOrBefore));
    }
}
