package bagward.watch;

import bagward.collector.CollectorState;
import bagward.store.QuarantineStore;
import bagward.store.StoreException;
import bagward.watch.Health.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;

/** Notes how the parts are doing. Safe for use by several threads. */
final class HealthBook {
    /** A board that is older than this is a fault of its own. */
    private static final Duration STALE = Duration.ofMinutes(1);

    private final QuarantineStore quarantine;
    private volatile Optional<Supplier<CollectorState>> collector = Optional.empty();
    private volatile Optional<String> unsaved = Optional.empty();
    private volatile Optional<String> failure = Optional.empty();
    private volatile Optional<Instant> lastTick = Optional.empty();
    private volatile Duration lastTook = Duration.ZERO;
    private volatile long tickedAt = System.nanoTime();

    HealthBook(QuarantineStore quarantine) {
        this.quarantine = quarantine;
    }

    void watch(Supplier<CollectorState> state) {
        collector = Optional.of(state);
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

    /** How everything is now. */
    Health now() {
        Optional<CollectorState> state = collector.map(Supplier::get);
        StoreLook store = look();
        return new Health(
                List.of(broker(state), collector(state), store.part, board()),
                lastTick,
                lastTook,
                state.flatMap(CollectorState::lastMessageAt),
                state.map(s -> s.counts().stored()).orElse(0L),
                store.quarantined.orElse(0));
    }

    private static Part broker(Optional<CollectorState> state) {
        boolean well = state.map(CollectorState::connected).orElse(false);
        return new Part("broker", well, well ? "connected" : "no connection to the broker");
    }

    private static Part collector(Optional<CollectorState> state) {
        return state.map(s -> new Part("collector", s.well(), s.says()))
                .orElse(new Part("collector", false, "not started yet"));
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

    private StoreLook look() {
        try {
            long count = quarantine.quarantinedCount();
            return new StoreLook(
                    new Part("store", unsaved.isEmpty(), unsaved.orElse("reads and writes")), OptionalLong.of(count));
        } catch (StoreException e) {
            return new StoreLook(new Part("store", false, String.valueOf(e.getMessage())), OptionalLong.empty());
        }
    }

    private record StoreLook(Part part, OptionalLong quarantined) {}
}
