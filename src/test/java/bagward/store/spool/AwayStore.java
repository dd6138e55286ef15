package bagward.store.spool;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.StoreException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A store that can be away: for writing only, or wholly, or from its n-th batch on. */
public final class AwayStore implements ReadingStore {
    private final ReadingStore real;
    private final List<Reading> arrivals = new ArrayList<>();
    private boolean away;
    private boolean refusing;
    private boolean stays;
    private int left = Integer.MAX_VALUE;

    public AwayStore(ReadingStore real) {
        this.real = real;
    }

    /** Whether nothing can be written or read; ends every other trouble. */
    public synchronized void away(boolean now) {
        away = now;
        refusing = false;
        left = Integer.MAX_VALUE;
    }

    /** Whether nothing can be written. */
    synchronized void refusing(boolean now) {
        refusing = now;
    }

    /** Makes the n-th batch from now fail, once or with all after it. */
    synchronized void failAt(int batch, boolean fromThenOn) {
        left = batch;
        stays = fromThenOn;
    }

    /** What was stored, in the order in which it came. */
    synchronized List<Reading> arrivals() {
        return List.copyOf(arrivals);
    }

    private void refuseIf(boolean trouble) {
        if (trouble) {
            throw new StoreException("the store is gone for the test");
        }
    }

    @Override
    public synchronized Receipt append(List<Reading> batch) {
        left--;
        refuseIf(away || refusing || left == 0 || (stays && left < 0));
        Receipt receipt = real.append(batch);
        arrivals.addAll(batch);
        return receipt;
    }

    @Override
    public synchronized List<Reading> readings(SeriesId series, Instant from, Instant to) {
        refuseIf(away);
        return real.readings(series, from, to);
    }

    @Override
    public synchronized Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        refuseIf(away);
        return real.newest(series, atOrBefore);
    }

    @Override
    public synchronized int deleteBefore(Instant before, int most) {
        refuseIf(away || refusing);
        return real.deleteBefore(before, most);
    }
}
