package bagward.collector;

import bagward.climate.Reading;
import bagward.collector.payload.Decoded;
import bagward.collector.payload.Message;
import bagward.collector.payload.MessageDecoder;
import bagward.store.Payload;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import bagward.store.ReadingStore;
import bagward.store.ReadingStore.Receipt;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Takes batches from the hand-off, stores them, and only then acknowledges them. One thread. */
final class Committer {
    private static final Logger LOG = LoggerFactory.getLogger(Committer.class);
    private static final Duration IDLE = Duration.ofMillis(200);
    private static final Backoff RETRY = new Backoff(Duration.ofMillis(100), Duration.ofSeconds(5));
    private static final Duration CLOSING = Duration.ofSeconds(15);

    private final Parts parts;
    private final ArrivalTimes arrivalTimes = new ArrivalTimes();
    private final Map<String, Memory> memories = new LinkedHashMap<>();
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread thread = new Thread(this::run, "commit readings");

    /**
     * What a committer works with.
     *
     * @param eachRound called before each batch, and a few times a second when there is none
     * @param whenIdle called after each batch
     */
    record Parts(
            StationClock clock,
            HandOff handOff,
            Sessions sessions,
            Handover handover,
            MessageDecoder decoder,
            ReadingStore readings,
            QuarantineStore quarantine,
            HeardTopics heard,
            SensorClocks sensorClocks,
            ClockRepair repair,
            Tally tally,
            Duration linger,
            Consumer<List<Reading>> afterCommit,
            Runnable eachRound,
            Runnable whenIdle) {}

    /** What is known of the messages of one session. */
    private record Memory(Repeats repeats, InOrder inOrder) {}

    /** What the messages of a batch hold. */
    private record Batch(List<Reading> readings, List<Quarantined> refused) {}

    Committer(Parts parts) {
        this.parts = parts;
        parts.sessions()
                .clients()
                .forEach(client ->
                        memories.put(client, new Memory(new Repeats(parts.readings()), new InOrder(parts.decoder()))));
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Ends after the batch at hand; what was not committed stays unacknowledged. */
    void stop() {
        stop.countDown();
        try {
            thread.join(CLOSING.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            while (stop.getCount() > 0) {
                parts.clock().look().ifPresent(parts.repair()::note);
                parts.repair().tryAll();
                parts.eachRound().run();
                takeTurns(parts.handOff().take(parts.linger(), IDLE));
                if (stop.getCount() > 0) {
                    commitEach(parts.handover().released());
                }
                parts.whenIdle().run();
            }
        } catch (InterruptedException e) {
            LOG.debug("Asked to stop");
        }
    }

    private void takeTurns(Map<String, List<Arrival>> turns) throws InterruptedException {
        for (Map.Entry<String, Memory> each : memories.entrySet()) {
            List<Arrival> arrived = turns.getOrDefault(each.getKey(), List.of());
            commitEach(parts.handover().pass(each.getValue().inOrder().turnOf(arrived)));
        }
    }

    private Repeats repeats(Arrival arrival) {
        return Objects.requireNonNull(memories.get(arrival.from().clientId())).repeats();
    }

    /** Arrivals of one connection at a time, so that what an older one stored is there to be compared with. */
    private void commitEach(List<Arrival> arrivals) throws InterruptedException {
        int start = 0;
        for (int i = 1; i <= arrivals.size(); i++) {
            if (i == arrivals.size()
                    || !arrivals.get(i).from().equals(arrivals.get(start).from())) {
                commit(arrivals.subList(start, i));
                start = i;
            }
        }
    }

    private void commit(List<Arrival> arrivals) throws InterruptedException {
        List<Decoded> decoded =
                arrivals.stream().map(a -> parts.decoder().decode(a.message())).toList();
        if (untilDone(() -> learn(arrivals, decoded)).isEmpty()) {
            return;
        }
        Batch batch = batch(arrivals, decoded);
        noteClocks(arrivals, decoded);
        Optional<Receipt> receipt = untilDone(() -> store(batch.readings()));
        if (receipt.isEmpty() || untilDone(() -> keep(batch.refused())).isEmpty()) {
            return;
        }
        parts.tally()
                .committed(
                        arrivals.size(),
                        receipt.get(),
                        batch.refused().size(),
                        parts.clock().clock().instant());
        arrivals.forEach(Arrival::acknowledge);
        tell(batch.readings());
    }

    private boolean learn(List<Arrival> arrivals, List<Decoded> decoded) {
        for (int i = 0; i < arrivals.size(); i++) {
            for (Reading reading : decoded.get(i).readings()) {
                repeats(arrivals.get(i)).learn(arrivals.get(i), reading);
            }
        }
        return true;
    }

    private Batch batch(List<Arrival> arrivals, List<Decoded> decoded) {
        Batch batch = new Batch(new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < arrivals.size(); i++) {
            add(arrivals.get(i), decoded.get(i), batch);
        }
        return batch;
    }

    private void noteClocks(List<Arrival> arrivals, List<Decoded> decoded) {
        for (int i = 0; i < arrivals.size(); i++) {
            Instant arrivedAt = arrivals.get(i).message().arrivedAt();
            decoded.get(i).ahead().forEach((sensor, by) -> parts.sensorClocks().heard(sensor, arrivedAt, by));
        }
    }

    private void add(Arrival arrival, Decoded decoded, Batch batch) {
        Message message = arrival.message();
        if (!decoded.known()) {
            // a subscription of an earlier configuration that the broker still keeps
            parts.heard().add(message);
        }
        for (Reading reading : decoded.readings()) {
            if (!repeats(arrival).claim(arrival, reading)) {
                batch.readings().add(arrivalTimes.parted(reading));
            }
        }
        if (!decoded.refusals().isEmpty()) {
            String reason = String.join("; ", decoded.refusals());
            batch.refused()
                    .add(new Quarantined(message.arrivedAt(), message.topic(), Payload.of(message.bytes()), reason));
        }
    }

    private Receipt store(List<Reading> readings) {
        return readings.isEmpty() ? new Receipt(0, 0, 0) : parts.readings().append(readings);
    }

    private boolean keep(List<Quarantined> refused) {
        if (!refused.isEmpty()) {
            parts.quarantine().quarantine(refused);
        }
        return true;
    }

    /**
     * Tries until it works, whatever the store throws: the messages stay unacknowledged meanwhile. Empty if the committer
     * is stopped before.
     */
    private <T> Optional<T> untilDone(Supplier<T> work) throws InterruptedException {
        int failures = 0;
        while (true) {
            try {
                return Optional.of(work.get());
            } catch (RuntimeException e) {
                failures++;
                parts.tally().storeFailed(String.valueOf(e.getMessage()));
                if (failures == 1) {
                    LOG.error("Readings could not be stored; they stay with the broker, and it is tried again", e);
                }
            }
            if (stop.await(RETRY.after(failures).toMillis(), TimeUnit.MILLISECONDS)) {
                return Optional.empty();
            }
        }
    }

    private void tell(List<Reading> readings) {
        if (readings.isEmpty()) {
            return;
        }
        try {
            parts.afterCommit().accept(List.copyOf(readings));
        } catch (RuntimeException e) {
            LOG.error("The readings are stored, but whoever waits for them failed", e);
        }
    }
}
