package bagward.site;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.store.AlarmStore;
import bagward.store.HeardTopic;
import bagward.store.Payload;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What the stores of the invented station hold. */
final class SampleStores implements AlarmStore, QuarantineStore {
    private final Instant now;

    SampleStores(Instant now) {
        this.now = now;
    }

    @Override
    public AlarmBook loadAlarms() {
        return AlarmBook.EMPTY;
    }

    @Override
    public void save(AlarmBook book, List<AlarmEvent> events) {
        throw new UnsupportedOperationException("pages never save alarms");
    }

    @Override
    public List<AlarmEvent> newestEvents(int most) {
        List<AlarmEvent> newest = new ArrayList<>(events(Instant.EPOCH, Instant.MAX));
        Collections.reverse(newest);
        return newest.subList(0, Math.min(most, newest.size()));
    }

    @Override
    public List<AlarmEvent> events(Instant from, Instant to) {
        return SampleJournal.before(now).stream()
                .filter(event -> !event.at().isBefore(from) && event.at().isBefore(to))
                .toList();
    }

    @Override
    public void quarantine(List<Quarantined> messages) {
        throw new UnsupportedOperationException("pages never quarantine");
    }

    @Override
    public List<Quarantined> newestQuarantined(int most) {
        return List.of(
                quarantined("lyngbakke/alder/air", "{\"t\":\"<b>warm</b>\"}", "/t is no number: give °C as a number"),
                quarantined("lyngbakke/birch/air", "140", "temperature of 140.0 °C is outside -40 to 80 °C"));
    }

    private Quarantined quarantined(String topic, String payload, String reason) {
        Payload bytes = Payload.of(payload.getBytes(StandardCharsets.UTF_8));
        return new Quarantined(now.minusSeconds(90), topic, bytes, reason);
    }

    @Override
    public long quarantinedCount() {
        return 3;
    }

    @Override
    public void heard(List<HeardTopic> topics) {
        throw new UnsupportedOperationException("pages never count topics");
    }

    @Override
    public List<HeardTopic> heardSince(Instant instant) {
        return List.of(new HeardTopic("lyngbakke/shed/scale", 41, now.minusSeconds(12), "{\"kg\":12.5}"));
    }
}
