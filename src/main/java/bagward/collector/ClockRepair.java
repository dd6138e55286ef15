package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.StoreException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * After the station's clock was set, marks the readings on disk that a wrong clock had dated, so that they are left out of
 * everything: those that now lie in the future, and, where the clock had run for a day at most since the start or since it
 * was set before, all without a time of their own that were dated by it. After a longer time it cannot be told which of the
 * two times was wrong, and only the future ones are marked. Used by one thread.
 */
final class ClockRepair {
    private static final Logger LOG = LoggerFactory.getLogger(ClockRepair.class);

    /** Readings that are off by less do no harm. */
    private static final Duration HARMLESS = Duration.ofMinutes(1);

    private static final Duration SHORT = Duration.ofDays(1);
    private static final Duration PAUSE = Duration.ofSeconds(10);

    private final List<SeriesId> series;
    private final ReadingStore store;
    private final Consumer<List<Reading>> told;
    private final Deque<StationClock.Jump> jumps = new ArrayDeque<>();
    private long triedAt = System.nanoTime() - PAUSE.toNanos();

    /**
     * @param series every series that is collected
     * @param store where the readings are
     * @param told hears of the readings that were marked
     */
    ClockRepair(List<SeriesId> series, ReadingStore store, Consumer<List<Reading>> told) {
        this.series = List.copyOf(series);
        this.store = store;
        this.told = told;
    }

    /** Takes a jump whose readings are to be marked. */
    void note(StationClock.Jump jump) {
        LOG.warn("The station's clock was set by {} at {}", jump.by(), jump.at());
        if (jump.by().abs().compareTo(HARMLESS) > 0) {
            jumps.add(jump);
        }
    }

    /** Marks what is to be marked, if the store can be asked; what it cannot is tried again later. */
    void tryAll() {
        if (jumps.isEmpty() || System.nanoTime() - triedAt < PAUSE.toNanos()) {
            return;
        }
        try {
            while (!jumps.isEmpty()) {
                repair(jumps.getFirst());
                jumps.removeFirst();
            }
        } catch (StoreException e) {
            triedAt = System.nanoTime();
            LOG.warn("Readings of a wrong clock are not marked yet: {}", e.getMessage());
        }
    }

    private void repair(StationClock.Jump jump) {
        List<Reading> marked = new ArrayList<>();
        for (SeriesId one : series) {
            store.readings(one, jump.at().plusMillis(1), Instant.MAX).forEach(r -> marked.add(mark(r)));
            Instant until = jump.at().minus(jump.by());
            if (Duration.between(jump.evenSince(), until).compareTo(SHORT) <= 0) {
                store.readings(one, jump.evenSince(), until.plusMillis(1)).stream()
                        .filter(r -> r.flags().contains(ReadingFlag.TIME_OF_ARRIVAL))
                        .forEach(r -> marked.add(mark(r)));
            }
        }
        List<Reading> distinct = marked.stream().distinct().toList();
        if (!distinct.isEmpty()) {
            store.append(distinct);
            told.accept(distinct);
            LOG.warn("{} readings that the wrong clock had dated are left out from now on", distinct.size());
        }
    }

    private static Reading mark(Reading reading) {
        return reading.with(ReadingFlag.CLOCK_WRONG);
    }
}
