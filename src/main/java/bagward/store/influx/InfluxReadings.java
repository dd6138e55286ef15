package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import bagward.store.ReadingStore;
import bagward.store.StoreException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.influxdb.dto.QueryResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Readings in InfluxDB; nothing else is kept there. It must be the only one that writes into its database.
 *
 * <p>A point overwrites an older one of the same series and time, and the server answers with no count. So what is stored
 * at the times of a batch is read before it is written. A batch of up to {@value #MOST_LINES} readings goes out as one
 * request; what of it is there when that fails is not known, and appending it again puts it right.
 */
public final class InfluxReadings implements ReadingStore, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(InfluxReadings.class);

    static final int MOST_LINES = 10_000;

    private final InfluxSettings settings;
    private final InfluxLink link;
    private final Statements statements;
    private final Lookup lookup;
    private final QuarantineStore quarantine;
    private final Refused refused;
    private final Writer writer;
    private final OldReadings old;
    private final Clock clock;
    private final int page;

    // The server shows a request that it is taking in field by field; a reader here waits until it is through.
    private final ReadWriteLock requests = new ReentrantReadWriteLock(true);

    InfluxReadings(InfluxSettings settings, QuarantineStore quarantine, Clock clock, Limits limits) {
        this.settings = settings;
        this.link = InfluxLink.to(settings, limits);
        this.statements = new Statements(settings.retentionPolicy());
        this.lookup = new Lookup(link, statements);
        this.quarantine = quarantine;
        this.refused = new Refused(quarantine, clock);
        this.writer = new Writer(settings, link, statements, refused);
        this.old = new OldReadings(settings, link, statements);
        this.page = limits.page();
        this.clock = clock;
    }

    /**
     * Readings in a database, which need not be there or answer yet.
     *
     * @param settings where it is
     * @param quarantine takes the lower one of two values for one series and time
     * @param clock for the time at which that happens
     * @throws bagward.fault.RefusedInputException if the file of certificates cannot be used
     */
    public static InfluxReadings open(InfluxSettings settings, QuarantineStore quarantine, Clock clock) {
        return new InfluxReadings(settings, quarantine, clock, Limits.USUAL);
    }

    /**
     * Waits until the server answers at all.
     *
     * @throws StoreException if it still does not after so long
     */
    public void awaitServer(Duration longest) {
        long start = System.nanoTime();
        for (int tries = 1; ; tries++) {
            try {
                link.version();
                return;
            } catch (StoreException away) {
                if (System.nanoTime() - start > longest.toNanos()) {
                    throw away;
                }
                if (tries == 1) {
                    LOG.warn(
                            "Waiting up to {} min for the store of readings: {}",
                            longest.toMinutes(),
                            away.getMessage());
                }
                pause();
            }
        }
    }

    private static void pause() {
        try {
            TimeUnit.SECONDS.sleep(1);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StoreException("waiting for the store of readings was interrupted", e);
        }
    }

    @Override
    public Receipt append(List<Reading> batch) {
        batch.forEach(this::refuseUnlessKept);
        requests.writeLock().lock();
        try {
            Meeting meeting = new Meeting(lookup.held(batch));
            batch.forEach(meeting::take);
            setAside(meeting.lower());
            lookup.willWrite(batch);
            int aside = writer.write(List.copyOf(meeting.toWrite()), MOST_LINES);
            return meeting.receipt(aside);
        } finally {
            requests.writeLock().unlock();
        }
    }

    private void refuseUnlessKept(Reading reading) {
        if (!Statements.keeps(reading.measuredAt())) {
            throw new StoreException("InfluxDB at " + settings.url() + " cannot keep " + reading.series() + " of "
                    + reading.measuredAt() + ": it knows the years 1678 to 2261; correct the clock of the sensor");
        }
    }

    /** Before the write: once the higher one is written, nobody could tell that there was a lower one. */
    private void setAside(List<Reading> lower) {
        if (!lower.isEmpty()) {
            Instant now = clock.instant();
            quarantine.quarantine(
                    lower.stream().map(one -> Quarantined.lower(one, now)).toList());
        }
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        List<Reading> readings = new ArrayList<>();
        Instant start = from;
        while (start.isBefore(to)) {
            List<Reading> next = ask(series, statements.page(series, start, to, page));
            readings.addAll(next);
            if (next.size() < page) {
                break;
            }
            start = next.get(next.size() - 1).measuredAt().plusMillis(1);
        }
        return List.copyOf(readings);
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return ask(series, statements.newest(series, atOrBefore)).stream().findFirst();
    }

    private List<Reading> ask(SeriesId series, String statement) {
        requests.readLock().lock();
        try {
            List<QueryResult.Series> answer = link.ask("reading " + series, statement);
            return answer.isEmpty() ? List.of() : Rows.of(series, answer.get(0));
        } finally {
            requests.readLock().unlock();
        }
    }

    /** Without holding up whoever stores: what is that old is read and written by nobody else. */
    @Override
    public int deleteBefore(Instant before, int most) {
        return old.delete(before, most);
    }

    /** What a person should know: readings that were refused, and that old ones are not deleted; empty if nothing. */
    public String troubles() {
        return (refused.says() + " " + old.says()).strip();
    }

    @Override
    public void close() {
        link.close();
    }
}
