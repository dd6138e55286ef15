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
 * message at most. Used by one thread, with the arrivals of one connection after those of another.
 */
final class Repeats {
    /** Messages that were in flight together arrived within this time, seconds. */
    private static final int TOGETHER_SECONDS = 10;

    private final ReadingStore store;
    private final Map<SeriesId, List<Double>> unclaimed = new HashMap<>();
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
        return inQuestion(arrival, reading)
                && unclaimed.getOrDefault(reading.series(), new ArrayList<>()).remove((Double) reading.value());
    }

    private static boolean inQuestion(Arrival arrival, Reading reading) {
        return arrival.perhapsRepeated() && reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL);
    }

    private List<Double> before(SeriesId series, Instant opened) {
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
