package bagward.store.influx;

import bagward.store.HeardTopic;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A quarantine in memory. */
final class HeldQuarantine implements QuarantineStore {
    private final List<Quarantined> held = new ArrayList<>();

    @Override
    public synchronized void quarantine(List<Quarantined> messages) {
        held.addAll(messages);
    }

    @Override
    public synchronized List<Quarantined> newestQuarantined(int most) {
        return held.subList(0, Math.min(most, held.size()));
    }

    @Override
    public synchronized long quarantinedCount() {
        return held.size();
    }

    /** What was set aside, each once. */
    synchronized List<String> payloads() {
        return held.stream().map(q -> q.payload().readable()).distinct().toList();
    }

    @Override
    public void heard(List<HeardTopic> topics) {
        throw new UnsupportedOperationException();
    }

    @Override
    public List<HeardTopic> heardSince(Instant instant) {
        throw new UnsupportedOperationException();
    }
}
