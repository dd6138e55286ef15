package bagward.app;

import bagward.bag.Register;
import bagward.station.Station;
import bagward.store.DayMarks;
import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import bagward.store.SummaryStore;
import bagward.store.SummedReadings;
import bagward.watch.Health;
import bagward.watch.KeepingSettings;
import bagward.watch.NightlyBackup;
import bagward.watch.Seasons;
import bagward.watch.SummaryKeeper;
import bagward.watch.SummedSeasons;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What is kept for long: summaries, the deletion of old readings, and backups. */
final class Keeping implements AutoCloseable {
    private final SummedReadings readings;
    private final SummedSeasons seasons;
    private final SummaryKeeper keeper;
    private final Optional<NightlyBackup> backup;

    /**
     * Parts that are not started yet.
     *
     * @param database the file of the stores
     * @param register the register as it stands, once the watch runs
     */
    Keeping(
            KeepingSettings settings,
            Station station,
            Path database,
            SqliteStores stores,
            ReadingStore store,
            Clock clock,
            Supplier<Register> register) {
        SummaryStore summaries = stores.summaries();
        DayMarks marks = new DayMarks(station);
        readings = new SummedReadings(store, summaries, marks);
        seasons = new SummedSeasons(station, summaries);
        keeper = new SummaryKeeper(clock, settings.readings(), readings, summaries, marks, register);
        backup = settings.backup().map(wanted -> new NightlyBackup(database, wanted, station.zone(), clock));
    }

    /** Readings, whose days are noted to be summed up. */
    ReadingStore readings() {
        return readings;
    }

    /** Houses over months and years. */
    Seasons seasons() {
        return seasons;
    }

    /** Starts. */
    void start() {
        keeper.start();
        backup.ifPresent(NightlyBackup::start);
    }

    /** How they are. */
    List<Health.Part> parts() {
        List<Health.Part> parts = new ArrayList<>(List.of(keeper.state()));
        backup.map(NightlyBackup::state).ifPresent(parts::add);
        return parts;
    }

    @Override
    public void close() {
        keeper.close();
        backup.ifPresent(NightlyBackup::close);
    }
}
