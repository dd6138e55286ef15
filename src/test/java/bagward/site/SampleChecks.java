package bagward.site;

import bagward.climate.FixedReadings;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SaltCheck;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.KeptCheck;
import bagward.store.SensorCheckStore;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks of sensors in memory, and a sensor that hung over two salts during the night. */
final class SampleChecks implements SensorCheckStore {
    private final List<KeptCheck> kept = new ArrayList<>();

    @Override
    public synchronized void add(SaltCheck check, String by, Instant recordedAt) {
        kept.add(new KeptCheck(kept.size() + 1L, check, by, recordedAt, Optional.empty()));
    }

    @Override
    public synchronized boolean withdraw(long id, KeptCheck.Withdrawal withdrawal) {
        int place = (int) id - 1;
        KeptCheck old = kept.get(place);
        kept.set(place, new KeptCheck(id, old.check(), old.by(), old.recordedAt(), Optional.of(withdrawal)));
        return old.withdrawn().isEmpty();
    }

    @Override
    public synchronized List<KeptCheck> checks() {
        return List.copyOf(kept);
    }

    /** The sensor read 78.3 %RH for the hour up to one time and 96.6 for the hour up to another, at 20 °C. */
    static ReadingSource night(SensorId sensor, Instant overFirst, Instant overSecond) {
        List<Reading> readings = new ArrayList<>();
        hour(readings, sensor, overFirst, 78.3);
        hour(readings, sensor, overSecond, 96.6);
        return new FixedReadings(readings);
    }

    private static void hour(List<Reading> readings, SensorId sensor, Instant until, double percent) {
        for (int minute = 0; minute <= 60; minute++) {
            Instant at = until.minusSeconds(60L * minute);
            readings.add(Reading.of(new SeriesId(sensor, Quantity.HUMIDITY), at, percent));
            readings.add(Reading.of(new SeriesId(sensor, Quantity.TEMPERATURE), at, 20));
        }
    }
}
