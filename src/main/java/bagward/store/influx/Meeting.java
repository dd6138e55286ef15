package bagward.store.influx;

import bagward.climate.Reading;
import bagward.store.ReadingStore;
import bagward.store.ReadingStore.Receipt;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A batch meets what is stored: which readings are to be written, and which were set aside. Used by one thread. */
final class Meeting {
    private final Map<Slot, Reading> held;
    private final Map<Slot, Reading> toWrite = new LinkedHashMap<>();
    private final List<Reading> lower = new ArrayList<>();
    private int stored;
    private int repeated;
    private int contradicted;

    /** @param held what is stored at the times of the batch */
    Meeting(Map<Slot, Reading> held) {
        this.held = new HashMap<>(held);
    }

    /** Takes the next reading of the batch. */
    void take(Reading reading) {
        Slot slot = Slot.of(reading);
        Reading before = held.get(slot);
        if (before == null) {
            stored++;
            keep(slot, reading);
            return;
        }
        Reading kept = ReadingStore.kept(before, reading);
        if (before.value() == reading.value()) {
            repeated++;
        } else {
            contradicted++;
            lower.add(kept.value() == before.value() ? reading : before);
        }
        if (!kept.equals(before)) {
            keep(slot, kept);
        }
    }

    private void keep(Slot slot, Reading reading) {
        held.put(slot, reading);
        toWrite.put(slot, reading);
    }

    /** What is to be written, one for each series and time. */
    Collection<Reading> toWrite() {
        return toWrite.values();
    }

    /** The lower ones of two values for one series and time. */
    List<Reading> lower() {
        return lower;
    }

    /**
     * What became of the batch.
     *
     * @param refused how many of those to be written were refused, which are not stored then
     */
    Receipt receipt(int refused) {
        return new Receipt(Math.max(0, stored - refused), repeated, contradicted);
    }
}
