package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Knows readings without a time of their own that a broker sends again: with a new time of arrival one would become two.
 * What was in flight when the last connection ended is sent first on the next, and not every broker marks it. So what
 * comes right after connecting is compared with the newest rows of its series from before; each row answers for one
 * message at most. For the first connection these rows are asked of the store, since an earlier process may have stored
 * them; for later ones they are known here, so that a store that is away holds up nothing. Used by one thread, with the
 * arrivals of one connection after those of another.
 */
final class Repeats {
    /** Messages that were in flight together arrived within this time, seconds. */
    private static final int TOGETHER_SECONDS = 10;

    private final ReadingStore store;
    private final Map<SeriesId, List<Double>> unclaimed = new HashMap<>();
    private final Map<SeriesId, List<Reading>> recent = new HashMap<>();
    private boolean first = true;
    private @Nullable Connection connection;

    Repeats(ReadingStore store) {
        this.store = store;
    }

    /**
     * Looks up what {@link #claim} will need.
     *
     * @throws bagward.store.StoreException if the store cannot be asked; may be called again then
     */
    void learn(Arrival arrival, Reading reading) {
        if (!Objects.equals(connection, arrival.from())) {
            first = connection == null;
            connection = arrival.from();
            unclaimed.clear();
        }
        if (inQuestion(arrival, reading)) {
            SeriesId series = reading.series();
            if (!unclaimed.containsKey(series)) {
                unclaimed.put(series, before(series, arrival.from().openedAt()));
            }
        }
    }

    /** Whether a reading is in the store already; the row that it is answers for no other. */
    boolean claim(Arrival arrival, Reading reading) {
        boolean claimed = inQuestion(arrival, reading)
                && unclaimed.getOrDefault(reading.series(), new ArrayList<>()).remove((Double) reading.value());
        if (!claimed && reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL)) {
            remember(reading);
        }
        return claimed;
    }

    private void remember(Reading reading) {
        List<Reading> held = recent.computeIfAbsent(reading.series(), s -> new ArrayList<>());
        held.add(reading);
        Instant oldest = reading.measuredAt().minusSeconds(TOGETHER_SECONDS);
        held.removeIf(r -> r.measuredAt().isBefore(oldest));
    }

    private static boolean inQuestion(Arrival arrival, Reading reading) {
        return arrival.perhapsRepeated() && reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL);
    }

    private List<Double> before(SeriesId series, Instant opened) {
        return first ? stored(series, opened) : remembered(series, opened);
    }

    private List<Double> remembered(SeriesId series, Instant opened) {
        return new ArrayList<>(recent.getOrDefault(series, List.of()).stream()
                .filter(r -> !r.measuredAt().isAfter(opened))
                .map(Reading::value)
                .toList());
    }

    private List<Double> stored(SeriesId series, Instant opened) {
        Optional<Reading> newest = store.newest(series, opened);
        if (newest.isEmpty()) {
            return new ArrayList<>();
        }
        Instant end = newest.get().measuredAt();
        return new ArrayList<>(store.readings(series, end.minusSeconds(TOGETHER_SECONDS), end.plusMillis(1)).stream()
                .filter(r -> r.flags().contains(ReadingFlag.TIME_OF_ARRIVAL))
                .map(Reading::value)
                .toList());
    }
}
