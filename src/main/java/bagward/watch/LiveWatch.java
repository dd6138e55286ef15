package bagward.watch;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmKey;
import bagward.alarm.Step;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.TagCode;
import bagward.board.Assessment;
import bagward.board.BaggedClimate;
import bagward.board.Board;
import bagward.board.BoardBuilder;
import bagward.board.BoardInputs;
import bagward.climate.Reading;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The watch as it runs: one lock guards register, alarms and board; a ticker moves them on. */
public final class LiveWatch implements Watch, AutoCloseable {
    /** Readings kept in memory: a bag that is on longer than the board looks back is read no further. */
    private static final Duration WINDOW = Duration.ofDays(22);

    private static final Duration SLOW_BEAT = Duration.ofSeconds(10);
    private static final Duration STALE_BOARD = Duration.ofMinutes(2);
    private static final Duration FUTURE_TOLERANCE = Duration.ofMinutes(5);
    private static final Logger LOG = LoggerFactory.getLogger(LiveWatch.class);

    private final WatchParts parts;
    private final Supplier<WatchedParts> others;
    private final RegisterRules rules;
    private final ReadingWindow window;
    private final Listeners listeners = new Listeners();
    private final Ticker ticker = new Ticker(this::tickSafely, SLOW_BEAT);
    private final AtomicLong stored = new AtomicLong();
    private final Object lock = new Object();

    private volatile Register register;
    private volatile Board board;
    private volatile TickState state = TickState.NONE;
    private AlarmBook book;
    private BoardInputs inputs;
    private Assessment assessment;

    /**
     * Takes register, alarms and readings from the store and makes a first board; nothing moves before {@link #start}.
     *
     * @param parts what it works with
     * @param others how the parts are that bring readings
     */
    public LiveWatch(WatchParts parts, Supplier<WatchedParts> others) {
        this.parts = parts;
        this.others = others;
        this.rules = new RegisterRules(parts.station(), parts.materials().keySet());
        this.register = rules.apply(Register.EMPTY, parts.register().changes());
        this.window =
                new ReadingWindow(parts.readings(), parts.clock().instant().minus(WINDOW));
        parts.station().sensors().forEach(sensor -> sensor.series().forEach(window::load));
        this.book = parts.alarms().loadAlarms();
        this.inputs = inputsNow();
        this.assessment = BoardBuilder.assess(inputs, book);
        this.board = BoardBuilder.board(inputs, assessment, book);
    }

    /** Begins to tick. */
    public void start() {
        ticker.start();
    }

    /** Takes readings that were just stored; a tick follows soon. */
    public void stored(List<Reading> readings) {
        window.stored(readings);
        stored.addAndGet(readings.size());
        ticker.ask();
    }

    @Override
    public Board board() {
        return board;
    }

    @Override
    public Subscription listen(Consumer<Board> listener) {
        return listeners.add(listener);
    }

    @Override
    public Register register() {
        return register;
    }

    @Override
    public void change(List<RegisterChange> changes, String by) {
        synchronized (lock) {
            Instant now = parts.clock().instant();
            refuseFuture(changes, now);
            Register after = rules.apply(register, changes);
            parts.register().append(changes, by, now);
            register = after;
            tick();
        }
    }

    private static void refuseFuture(List<RegisterChange> changes, Instant now) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            Instant at = changes.get(i).at();
            if (at.isAfter(now.plus(FUTURE_TOLERANCE))) {
                faults.add(new Fault(
                        "change " + (i + 1) + ", at",
                        at.toString(),
                        "must not lie in the future; it is now " + now,
                        "Give the time at which it was done."));
            }
        }
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
    }

    @Override
    public boolean acknowledge(AlarmKey key, String by) {
        synchronized (lock) {
            Step step = AlarmEngine.acknowledge(book, key, by, parts.clock().instant());
            if (!step.changed()) {
                return false;
            }
            parts.alarms().save(step.book(), step.events());
            book = step.book();
            publish(BoardBuilder.board(inputs, assessment, book));
            return true;
        }
    }

    @Override
    public Optional<BagHistory> history(TagCode tag) {
        return register.find(tag).filter(head -> !head.baggings().isEmpty()).map(this::history);
    }

    private BagHistory history(Head head) {
        Bagging newest = head.baggings().get(head.baggings().size() - 1);
        BaggedClimate climate = BoardBuilder.climate(inputsNow(), head, newest);
        return new BagHistory(head, newest, climate.house(), climate.bag());
    }

    @Override
    public Health health() {
        TickState ticked = state;
        WatchedParts watched = others.get();
        List<Health.Part> all = new ArrayList<>(watched.parts());
        all.add(ticked.part(parts.clock().instant(), STALE_BOARD));
        return new Health(
                all,
                ticked.at(),
                ticked.took(),
                watched.lastMessageAt(),
                stored.get(),
                parts.quarantine().quarantinedCount());
    }

    private void tickSafely() {
        synchronized (lock) {
            try {
                tick();
            } catch (RuntimeException e) {
                LOG.error("the board could not be made; it is tried again", e);
                state = state.failed(e);
            }
        }
    }

    private void tick() {
        long begun = System.nanoTime();
        inputs = inputsNow();
        window.beginAt(inputs.now().minus(WINDOW));
        assessment = BoardBuilder.assess(inputs, book);
        Step step = AlarmEngine.step(book, inputs.now(), assessment.verdicts(), parts.rules());
        if (!step.book().alarms().equals(book.alarms()) || !step.events().isEmpty()) {
            parts.alarms().save(step.book(), step.events());
            book = step.book();
        }
        publish(BoardBuilder.board(inputs, assessment, book));
        state = TickState.done(inputs.now(), Duration.ofNanos(System.nanoTime() - begun));
    }

    private void publish(Board made) {
        board = made;
        listeners.tell(made);
    }

    private BoardInputs inputsNow() {
        return new BoardInputs(
                parts.clock().instant(),
                parts.station(),
                register,
                parts.materials(),
                window,
                parts.rules(),
                parts.organisms());
    }

    @Override
    public void close() {
        ticker.close();
        listeners.close();
    }
}
