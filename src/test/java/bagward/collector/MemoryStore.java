package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.HeardTopic;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import bagward.store.ReadingStore;
import bagward.store.StoreException;
import bagward.store.SubscriptionStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A store in memory that can be made to fail. */
final class MemoryStore implements ReadingStore, QuarantineStore, SubscriptionStore {
    private final Map<SeriesId, TreeMap<Instant, Reading>> rows = new TreeMap<>();
    private final List<Quarantined> quarantined = new ArrayList<>();
    private final Map<String, HeardTopic> heard = new TreeMap<>();
    private final Map<String, Set<String>> subscriptions = new TreeMap<>();
    private boolean broken;
    private int largestBatch;
    private int refusedBatches;

    synchronized void setBroken(boolean nowBroken) {
        broken = nowBroken;
    }

    synchronized int refusedBatches() {
        return refusedBatches;
    }

    synchronized int largestBatch() {
        return largestBatch;
    }

    synchronized List<Reading> all() {
        return rows.values().stream().flatMap(r -> r.values().stream()).toList();
    }

    synchronized int count() {
        return rows.values().stream().mapToInt(TreeMap::size).sum();
    }

    private void failIfBroken() {
        if (broken) {
            refusedBatches++;
            throw new StoreException("the disk is full", new IllegalStateException("test"));
        }
    }

    @Override
    public synchronized Receipt append(List<Reading> batch) {
        failIfBroken();
        largestBatch = Math.max(largestBatch, batch.size());
        int stored = 0;
        int repeated = 0;
        int contradicted = 0;
        for (Reading reading : batch) {
            TreeMap<Instant, Reading> series = rows.computeIfAbsent(reading.series(), s -> new TreeMap<>());
            Reading before = series.get(reading.measuredAt());
            series.merge(reading.measuredAt(), reading, ReadingStore::kept);
            if (before == null) {
                stored++;
            } else if (before.value() == reading.value()) {
                repeated++;
            } else {
                contradicted++;
            }
        }
        return new Receipt(stored, repeated, contradicted);
    }

    @Override
    public synchronized List<Reading> readings(SeriesId series, Instant from, Instant to) {
        return List.copyOf(rows.getOrDefault(series, new TreeMap<>())
                .subMap(from, true, to, false)
                .values());
    }

    @Override
    public synchronized Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return Optional.ofNullable(rows.getOrDefault(series, new TreeMap<>()).floorEntry(atOrBefore))
                .map(Map.Entry::getValue);
    }

    @Override
    public synchronized void quarantine(List<Quarantined> messages) {
        failIfBroken();
        quarantined.addAll(messages);
    }

    @Override
    public synchronized List<Quarantined> newestQuarantined(int most) {
        List<Quarantined> newestFirst = new ArrayList<>(quarantined);
        java.util.Collections.reverse(newestFirst);
        return newestFirst.subList(0, Math.min(most, newestFirst.size()));
    }

    @Override
    public synchronized long quarantinedCount() {
        return quarantined.size();
    }

    @Override
    public synchronized void heard(List<HeardTopic> topics) {
        failIfBroken();
        for (HeardTopic topic : topics) {
            heard.merge(
                    topic.topic(),
                    topic,
                    (a, b) -> new HeardTopic(b.topic(), a.messages() + b.messages(), b.lastAt(), b.sample()));
        }
    }

    @Override
    public synchronized List<HeardTopic> heardSince(Instant instant) {
        return heard.values().stream()
                .filter(h -> !h.lastAt().isBefore(instant))
                .toList();
    }

    @Override
    public synchronized Map<String, Set<String>> held(String broker) {
        Map<String, Set<String>> copy = new TreeMap<>();
        subscriptions.forEach((client, filters) -> copy.put(client, Set.copyOf(filters)));
        return copy;
    }

    @Override
    public synchronized void hold(String broker, String client, Collection<String> filters) {
        subscriptions.computeIfAbsent(client, c -> new TreeSet<>()).addAll(filters);
    }

    @Override
    public synchronized void letGo(String broker, String client, Collection<String> filters) {
        subscriptions.getOrDefault(client, new TreeSet<>()).removeAll(filters);
    }

    @Override
    public synchronized void end(String broker, String client) {
        subscriptions.remove(client);
    }
}
