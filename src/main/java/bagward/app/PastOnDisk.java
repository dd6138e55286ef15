package bagward.app;

import bagward.bag.RegisterChange;
import bagward.climate.ReadingSource;
import bagward.store.SqliteStores;
import bagward.watch.SensorChecks;
import bagward.watch.rehearsal.StoredPast;
import java.time.Clock;
import java.util.List;

/** The past of a station over a connection of its own, which changes nothing and holds no writer up. */
final class PastOnDisk implements StoredPast {
    private final Parts opened = new Parts();
    private final SqliteStores stores;
    private final ReadingsPlace place;

    private PastOnDisk(StoreSettings settings) {
        stores = opened.add(SqliteStores.look(settings.folder().resolve(StoreFileOption.DATABASE)));
        place = opened.add(ReadingsPlace.open(settings, stores, Clock.systemUTC()));
    }

    /** @throws bagward.store.StoreException if there is no store, or not one of this version */
    static StoredPast open(StoreSettings settings) {
        return new PastOnDisk(settings);
    }

    @Override
    public ReadingSource readings() {
        return new SensorChecks(stores.sensorChecks()).corrected(place.readings());
    }

    @Override
    public List<RegisterChange> changes() {
        return stores.register().changes();
    }

    @Override
    public void close() {
        opened.close();
    }
}
