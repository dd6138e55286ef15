package bagward.watch;

import bagward.climate.CorrectedReadings;
import bagward.climate.HumidityCorrection;
import bagward.climate.ReadingSource;
import bagward.climate.SaltCheck;
import bagward.climate.SensorId;
import bagward.store.KeptCheck;
import bagward.store.SensorCheckStore;
import java.time.Instant;
import java.util.List;

/**
 * The checks of humidity sensors and the corrections that follow from them. What is stored stays raw; who asks for
 * climate asks through {@link #corrected}. Safe for use by several threads.
 */
public final class SensorChecks {
    private final SensorCheckStore store;
    private volatile List<KeptCheck> checks;
    private volatile Runnable changed = () -> {};

    /** @throws bagward.store.StoreException if the store cannot be read */
    public SensorChecks(SensorCheckStore store) {
        this.store = store;
        this.checks = store.checks();
    }

    /** Readings of a source with every correction that holds. */
    public ReadingSource corrected(ReadingSource raw) {
        List<HumidityCorrection> corrections = checks.stream()
                .filter(kept -> kept.withdrawn().isEmpty())
                .map(kept -> kept.check().correction())
                .toList();
        return corrections.isEmpty() ? raw : new CorrectedReadings(raw, corrections);
    }

    /** Calls back, from now on, when corrections have changed; there is one listener. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** The checks of a sensor, newest first. */
    public List<KeptCheck> of(SensorId sensor) {
        return checks.stream()
                .filter(kept -> kept.check().sensor().equals(sensor))
                .sorted((one, other) ->
                        other.check().checkedAt().compareTo(one.check().checkedAt()))
                .toList();
    }

    /** Keeps a check; its correction holds from the next board on. */
    public synchronized void keep(SaltCheck check, String by, Instant now) {
        store.add(check, by, now);
        read();
    }

    /** Withdraws a check; whether there was one that still counted. */
    public synchronized boolean withdraw(long id, KeptCheck.Withdrawal withdrawal) {
        boolean withdrawn = store.withdraw(id, withdrawal);
        read();
        return withdrawn;
    }

    private void read() {
        checks = store.checks();
        changed.run();
    }
}
