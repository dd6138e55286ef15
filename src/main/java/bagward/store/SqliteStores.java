package bagward.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/**
 * The store in one SQLite file: readings, quarantine, register changes, alarms, subscriptions and outbox. Safe for use by several threads;
 * closing it waits for a write that is under way.
 */
public final class SqliteStores implements AutoCloseable {
    private final Optional<StoreLock> lock;
    private final Database database;
    private final Clock clock;

    private SqliteStores(Optional<StoreLock> lock, Database database, Clock clock) {
        this.lock = lock;
        this.database = database;
        this.clock = clock;
    }

    /**
     * Opens a store, and makes it (and its folder) if it is missing; an older one is brought up to date.
     *
     * @param file the database file; its write-ahead log and its lock lie beside it
     * @param clock for the time at which a contradicted reading is set aside
     * @throws StoreException if it is in use, damaged, foreign, newer than this program, or cannot be written
     */
    public static SqliteStores open(Path file, Clock clock) {
        return open(Connector.to(file), clock);
    }

    /**
     * Opens a store to look at the past, also while a program watches with it; nothing is to be changed through it.
     *
     * @param file the database file
     * @throws StoreException if there is none, it is damaged or foreign, or of another version than this program
     */
    public static SqliteStores look(Path file) {
        Connector connector = Connector.to(file);
        Schema.refuseUnlessCurrent(connector);
        return new SqliteStores(Optional.empty(), new Database(file, connector), Clock.systemUTC());
    }

    static SqliteStores open(Connector connector, Clock clock) {
        StoreLock lock = StoreLock.take(connector.file());
        try {
            Schema.bringUpToDate(connector);
        } catch (RuntimeException | Error e) {
            lock.close();
            throw e;
        }
        return new SqliteStores(Optional.of(lock), new Database(connector.file(), connector), clock);
    }

    /** The readings. */
    public ReadingStore readings() {
        return new SqliteReadings(database, clock);
    }

    /** Summaries of ten minutes and of days. */
    public SummaryStore summaries() {
        return new SqliteSummaries(database);
    }

    /** Unusable messages and unknown topics. */
    public QuarantineStore quarantine() {
        return new SqliteQuarantine(database);
    }

    /** The journal of register changes. */
    public RegisterStore register() {
        return new SqliteRegister(database);
    }

    /** Checks of humidity sensors. */
    public SensorCheckStore sensorChecks() {
        return new SqliteSensorChecks(database);
    }

    /** State and journal of the alarms. */
    public AlarmStore alarms() {
        return new SqliteAlarms(database);
    }

    /** The journal of pollen scores. */
    public PollenStore pollen() {
        return new SqlitePollen(database);
    }

    /** What our clients are subscribed to at brokers. */
    public SubscriptionStore subscriptions() {
        return new SqliteSubscriptions(database);
    }

    /** Messages on their way. */
    public OutboxStore outbox() {
        return new SqliteOutbox(database);
    }

    /**
     * Looks through the whole file for damage; takes seconds for each GB.
     *
     * @return "ok", or what is wrong
     */
    public String checkIntegrity() {
        return String.join("; ", database.list("checking it", "PRAGMA integrity_check", row -> row.getString(1)));
    }

    @Override
    public void close() {
        database.close();
        lock.ifPresent(StoreLock::close);
    }
}
