package bagward.watch;

import bagward.bag.Register;
import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.store.DayMarks;
import bagward.store.StoreException;
import bagward.store.SummaryStore;
import bagward.store.SummedReadings;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sums days up, and deletes readings that are older than they need be, in small steps on a thread of its own. While the
 * store is away it waits and tries again. Safe for use by several threads.
 */
public final class SummaryKeeper implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SummaryKeeper.class);

    private static final Duration EVERY = Duration.ofMinutes(10);
    private static final Duration CLOSING = Duration.ofSeconds(10);
    private static final int DELETED_AT_ONCE = 2_000;
    private static final int DAYS_AT_ONCE = 10_000;

    /** Between two steps of a deletion, so that whoever stores readings comes first, ms. */
    private static final long REST_MILLIS = 20;

    private final Clock clock;
    private final Duration keep;
    private final SummedReadings readings;
    private final SummaryStore summaries;
    private final DayMarks marks;
    private final Supplier<Register> register;
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Clockwork clockwork =
            new Clockwork("sum up days", Pause.atMost(Duration.ZERO), this::tryPass, CLOSING);
    private volatile Health.Part state = new Health.Part("summaries", true, "nothing was summed up yet");

    /**
     * A keeper that is not started yet.
     *
     * @param clock the station's clock
     * @param keep how long single readings are kept
     * @param readings where they are
     * @param summaries where summaries go
     * @param marks what the readings of a day sum up to
     * @param register the register as it stands; readings of heads that are worked on stay
     */
    public SummaryKeeper(
            Clock clock,
            Duration keep,
            SummedReadings readings,
            SummaryStore summaries,
            DayMarks marks,
            Supplier<Register> register) {
        this.clock = clock;
        this.keep = keep;
        this.readings = readings;
        this.summaries = summaries;
        this.marks = marks;
        this.register = register;
    }

    /** Starts. */
    public void start() {
        clockwork.start();
    }

    /** How it is. */
    public Health.Part state() {
        return state;
    }

    private Pause tryPass() {
        try {
            long summed = sumUp();
            long deleted = deleteOld();
            if (deleted > 0) {
                LOG.info("{} readings older than they need be were deleted; their summaries stay", deleted);
            }
            state = new Health.Part("summaries", true, said(summed));
        } catch (StoreException e) {
            LOG.warn("Days could not be summed up; it is tried again: {}", e.getMessage());
            state = new Health.Part("summaries", false, "not up to date: " + e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Pause.atMost(EVERY);
    }

    private String said(long summed) {
        Instant since = summaries.keptSince();
        String kept = since.equals(Instant.MIN) ? "every reading is there" : "readings are kept since " + since;
        return "summed up " + summed + " days of series in the last pass; " + kept;
    }

    /**
     * Sums up every day that is due.
     *
     * @return how many
     */
    public long sumUp() {
        List<SummaryStore.Due> due = readings.due(DAYS_AT_ONCE);
        long done = 0;
        for (SummaryStore.Due day : due) {
            if (stop.getCount() == 0) {
                return done;
            }
            summaries.put(day, marks.sum(day.day(), readings));
            done++;
        }
        return due.size() < DAYS_AT_ONCE ? done : done + sumUp();
    }

    /**
     * Deletes readings that are older than they need be, whole days at a time, as long as the days that they tell about
     * are summed up.
     *
     * @return how many
     */
    public long deleteOld() throws InterruptedException {
        Instant limit = ReadingLimit.of(clock.instant(), keep, register.get());
        Instant before = marks.neededFrom(marks.day(limit));
        long gone = 0;
        for (int step = 1; step > 0; gone += step) {
            step = readings.deleteBefore(before, DELETED_AT_ONCE);
            if (step > 0 && stop.await(REST_MILLIS, TimeUnit.MILLISECONDS)) {
                return gone + step;
            }
        }
        return gone;
    }

    /** Stops after the step that is under way. */
    @Override
    public void close() {
        stop.countDown();
        clockwork.close();
    }
}
