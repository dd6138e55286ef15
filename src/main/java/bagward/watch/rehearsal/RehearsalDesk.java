package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import bagward.fault.BagwardException;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Runs rehearsals on one thread that rests a third of its time, so that the running watch gets its
 * share also on a machine with one processor.
 */
public final class RehearsalDesk implements Rehearsals, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(RehearsalDesk.class);
    private static final int WORK_TO_REST = 2;

    private final RehearsedStation station;
    private final List<Rule> running;
    private final Supplier<StoredPast> open;
    private RehearsalState state = new RehearsalState.None();
    private boolean stopped;

    /**
     * A desk with nothing on it.
     *
     * @param running the rules that are watched
     * @param open opens the past for one rehearsal
     */
    public RehearsalDesk(RehearsedStation station, List<Rule> running, Supplier<StoredPast> open) {
        this.station = station;
        this.running = List.copyOf(running);
        this.open = open;
    }

    @Override
    public synchronized RehearsalState state() {
        return state;
    }

    @Override
    public List<Rule> changed(String text) {
        return new RuleText(
                        house -> station.station().findHouse(house).isPresent(),
                        station.materials()::containsKey,
                        station.crops().ids()::contains)
                .changed(running, text);
    }

    @Override
    public synchronized void start(RehearsalOrder order) {
        if (state instanceof RehearsalState.Runs) {
            throw new RefusedInputException(
                    List.of(new Fault("text", "", "another rehearsal runs", "Wait until it is done, or stop it.")));
        }
        RehearsalLimits.check(order.days(), station.station().sensors());
        stopped = false;
        state = new RehearsalState.Runs(order, 0);
        Thread thread = new Thread(() -> run(order), "rehearsal");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public synchronized void stop() {
        stopped = true;
    }

    private void run(RehearsalOrder order) {
        long start = System.nanoTime();
        try (StoredPast past = open.get()) {
            List<List<Rule>> sets = new ArrayList<>(List.of(order.rules()));
            if (order.besideRunning()) {
                sets.add(running);
            }
            Rests rests = new Rests();
            Optional<RehearsalResult> result = new RehearsalPass(station, order.days(), false, share -> {
                        rests.take();
                        return goOn(order, share);
                    })
                    .run(past, sets);
            Duration took = Duration.ofNanos(System.nanoTime() - start);
            end(result.<RehearsalState>map(r -> new RehearsalState.Done(order, r, took))
                    .orElseGet(() -> new RehearsalState.Ended(order, "It was stopped.")));
        } catch (BagwardException known) {
            LOG.warn("a rehearsal failed", known);
            end(new RehearsalState.Ended(order, "It failed: " + known.getMessage()));
        } catch (RuntimeException defect) {
            LOG.error("a rehearsal ended by a defect", defect);
            end(new RehearsalState.Ended(order, "It ended by a defect; the log says more."));
        }
    }

    private synchronized boolean goOn(RehearsalOrder order, double share) {
        state = new RehearsalState.Runs(order, share);
        return !stopped;
    }

    private synchronized void end(RehearsalState last) {
        state = last;
    }

    @Override
    public void close() {
        stop();
    }

    /** Sleeps half as long as was worked since the last rest. */
    private static final class Rests {
        private long since = System.nanoTime();

        void take() {
            try {
                TimeUnit.NANOSECONDS.sleep((System.nanoTime() - since) / WORK_TO_REST);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            since = System.nanoTime();
        }
    }
}
