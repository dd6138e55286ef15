package bagward.watch;

import bagward.alarm.SystemState;
import bagward.store.QuarantineStore;
import bagward.store.StoreException;
import bagward.watch.Health.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes how the parts are doing. Safe for use by several threads. */
final class HealthBook {
    /** A board that is older than this is a fault of its own. */
    private static final Duration STALE = Duration.ofMinutes(1);

    private final QuarantineStore quarantine;
    private final Supplier<WatchedParts> others;
    private volatile Optional<String> unsaved = Optional.empty();
    private volatile Optional<String> failure = Optional.empty();
    private volatile Optional<Instant> lastTick = Optional.empty();
    private volatile Duration lastTook = Duration.ZERO;
    private volatile long tickedAt = System.nanoTime();

    HealthBook(QuarantineStore quarantine, Supplier<WatchedParts> others) {
        this.quarantine = quarantine;
        this.others = others;
    }

    void ticked(Instant at, Duration took) {
        lastTick = Optional.of(at);
        lastTook = took;
        tickedAt = System.nanoTime();
        failure = Optional.empty();
    }

    void failed(RuntimeException e) {
        failure = Optional.of("the board could not be made and is tried again: " + e);
    }

    void saved(Optional<String> trouble) {
        unsaved = trouble;
    }

    /** How the system is, for its alarms. */
    SystemState system() {
        return others.get().system();
    }

    /** How everything is now. */
    Health now() {
        WatchedParts watched = others.get();
        Database database = database();
        List<Part> parts = new ArrayList<>(watched.parts());
        parts.add(database.part);
        parts.add(board());
        return new Health(parts, lastTick, lastTook, watched.lastMessageAt(), watched.intake(), database.quarantined);
    }

    private Part board() {
        Duration age = Duration.ofNanos(System.nanoTime() - tickedAt);
        if (failure.isPresent()) {
            return new Part("board", false, failure.get());
        }
        if (age.compareTo(STALE) > 0) {
            return new Part("board", false, "no new board for " + age.toSeconds() + " s");
        }
        return new Part("board", true, "made in " + lastTook.toMillis() + " ms");
    }

    private Database database() {
        try {
            long count = quarantine.quarantinedCount();
            return new Database(new Part("database", unsaved.isEmpty(), unsaved.orElse("reads and writes")), count);
        } catch (StoreException e) {
            return new Database(new Part("database", false, String.valueOf(e.getMessage())), 0);
        }
    }

    private record Database(Part part, long quarantined) {}
}
