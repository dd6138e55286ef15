package bagward.collector;

import bagward.store.ReadingStore;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was counted since the start. Safe for several threads. */
final class Tally {
    private long messages;
    private long stored;
    private long repeated;
    private long contradicted;
    private long quarantined;
    private long lost;
    private String storeTrouble = "";
    private @Nullable Instant lastMessageAt;
    private @Nullable Instant lastCommitAt;

    synchronized void arrived(Instant at) {
        lastMessageAt = at;
    }

    synchronized void lost() {
        lost++;
    }

    synchronized void storeFailed(String why) {
        storeTrouble = why;
    }

    synchronized boolean storing() {
        return storeTrouble.isEmpty();
    }

    synchronized void committed(int count, ReadingStore.Receipt receipt, int toQuarantine, Instant at) {
        messages += count;
        stored += receipt.stored();
        repeated += receipt.repeated();
        contradicted += receipt.contradicted();
        quarantined += toQuarantine;
        lastCommitAt = at;
        storeTrouble = "";
    }

    /** The state, with what others know. */
    synchronized CollectorState state(Sessions sessions, long heard, int waiting, Optional<String> clock) {
        boolean connected = sessions.connected();
        CollectorState.Counts counts = new CollectorState.Counts(
                messages, stored, repeated, contradicted, quarantined, heard, waiting, lost, sessions.connections());
        return new CollectorState(
                connected,
                storeTrouble.isEmpty(),
                Optional.ofNullable(lastMessageAt),
                Optional.ofNullable(lastCommitAt),
                counts,
                clock.orElseGet(() -> sentence(connected, sessions.trouble(), waiting)));
    }

    private String sentence(boolean connected, String trouble, int waiting) {
        if (!storeTrouble.isEmpty()) {
            return "The store does not take readings, nothing is acknowledged and " + waiting + " messages wait here: "
                    + storeTrouble;
        }
        if (!connected) {
            return "Not connected: " + trouble + ". Trying again.";
        }
        return messages == 0 ? "Connected; no message of a sensor yet." : "Connected and storing.";
    }
}
