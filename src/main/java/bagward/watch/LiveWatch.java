package bagward.watch;

import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.alarm.Step;
import bagward.bag.BagClimate;
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
import bagward.climate.ReadingSource;
import bagward.climate.Span;
import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The running watch: makes the board soon after news, and every few seconds without any. The first board is there when
 * the constructor returns; those after it come from {@link #start} on.
 */
public final class LiveWatch implements Watch, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(LiveWatch.class);

    private final WatchParts parts;
    private final WatchSettings settings;
    private final ReadingWindow window;
    private final RegisterKeeper register;
    private final AlarmKeeper alarms;
    private final KnowledgeKeeper knowledge;
    private final HealthBook health;
    private final Listeners listeners = new Listeners();
    private final Clockwork ticker;
    /** Held while a board is made. */
    private final Object ticking = new Object();

    /** Held while alarms move; taken alone or inside the other, and short, so that nobody who confirms waits for a board. */
    private final Object moving = new Object();

    private volatile Latest latest;

    /**
     * Loads register, alarms and readings, and makes the first board.
     *
     * @param parts what it works with
     * @param others how the parts are that bring readings, for the health page
     * @param settings how it runs
     * @throws bagward.fault.RefusedInputException if the stored register no longer fits the configuration
     * @throws bagward.store.StoreException if the store cannot be read
     */
    public LiveWatch(WatchParts parts, Supplier<WatchedParts> others, WatchSettings settings) {
        this.parts = parts;
        this.settings = settings;
        this.register = new RegisterKeeper(
                new RegisterRules(
                        parts.station(),
                        parts.materials().keySet(),
                        parts.crops().ids()),
                parts.register(),
                settings.futureTolerance());
        this.alarms = new AlarmKeeper(parts.alarms());
        this.knowledge = new KnowledgeKeeper(parts, settings.window());
        this.health = new HealthBook(parts.quarantine(), others);
        this.window = ReadingWindow.of(parts.station(), parts.readings(), now().minus(settings.window()));
        this.ticker = Clockwork.resting(
                "board-ticker", new Pause(settings.shortestPause(), settings.longestPause()), this::tryTick);
        BoardInputs first = inputs(now(), window);
        this.latest = moved(first, BoardBuilder.assess(first, alarms.book()));
        health.ticked(latest.board.at(), Duration.ZERO);
        parts.checks().onChange(this::readOtherwise);
    }

    /** Starts making boards. */
    public void start() {
        ticker.start();
    }

    /** Takes readings that are on disk; they are on the next board. Returns at once. */
    public void stored(List<Reading> readings) {
        window.add(readings);
        knowledge.heard(readings);
        ticker.ask();
    }

    private void readOtherwise() {
        knowledge.forget();
        ticker.ask();
    }

    @Override
    public Board board() {
        return latest.board;
    }

    @Override
    public Subscription listen(Consumer<Board> listener) {
        return listeners.add(listener);
    }

    @Override
    public Register register() {
        return register.register();
    }

    @Override
    public void change(List<RegisterChange> changes, String by) {
        register.change(changes, by, now());
        tryTick();
    }

    @Override
    public Set<AlarmKey> acknowledge(Set<AlarmKey> keys, String by) {
        synchronized (moving) {
            Step step = AlarmEngine.acknowledge(alarms.book(), keys, by, now());
            if (step.changed()) {
                take(step);
            }
            return step.events().stream().map(AlarmEvent::key).collect(Collectors.toSet());
        }
    }

    @Override
    public void act(AlarmAct act) {
        synchronized (moving) {
            take(act.on(alarms.book(), now()));
        }
        tryTick();
    }

    private void take(Step step) {
        health.saved(alarms.take(step));
        publish(latest.with(BoardBuilder.board(latest.in, latest.assessment, step.book())));
    }

    @Override
    public List<Rule> rules() {
        return parts.rules();
    }

    @Override
    public Optional<BagHistory> history(TagCode tag) {
        Instant now = now();
        return register()
                .find(tag)
                .flatMap(head -> newestBagging(head).map(bagging -> {
                    BoardInputs in = inputs(now, parts.readings());
                    BaggedClimate climate = BoardBuilder.climate(in, head, bagging);
                    return new BagHistory(
                            head, bagging, climate.house(), climate.bag(), BoardBuilder.mould(in, head, bagging));
                }));
    }

    @Override
    public BagClimate inBag(Head head, Bagging bagging) {
        return BoardBuilder.climate(inputs(now(), parts.readings()), head, bagging)
                .bag();
    }

    @Override
    public Optional<PlaceStay> stay(HouseId place, Span span) {
        return PlaceStays.of(inputs(now(), parts.readings()), place, span);
    }

    private static Optional<Bagging> newestBagging(Head head) {
        List<Bagging> baggings = head.baggings();
        return baggings.isEmpty() ? Optional.empty() : Optional.of(baggings.get(baggings.size() - 1));
    }

    @Override
    public Health health() {
        return health.now();
    }

    private void tryTick() {
        synchronized (ticking) {
            long start = System.nanoTime();
            try {
                Instant now = now();
                window.forgetBefore(now.minus(settings.window()));
                BoardInputs in = inputs(now, window);
                Assessment assessment = BoardBuilder.assess(in, alarms.book());
                synchronized (moving) {
                    publish(moved(in, assessment));
                }
                health.ticked(now, Duration.ofNanos(System.nanoTime() - start));
            } catch (RuntimeException e) {
                LOG.error("the board could not be made; it is tried again", e);
                health.failed(e);
            }
        }
    }

    /** Moves the alarms as they stand by now, which may be later than the assessment began. */
    private Latest moved(BoardInputs in, Assessment assessment) {
        Step step = AlarmEngine.step(alarms.book(), in.now(), assessment.verdicts(), parts.rules());
        health.saved(alarms.take(step));
        return new Latest(in, assessment, BoardBuilder.board(in, assessment, step.book()));
    }

    private void publish(Latest next) {
        latest = next;
        listeners.publish(next.board);
    }

    private BoardInputs inputs(Instant now, ReadingSource readings) {
        Register current = register();
        return new BoardInputs(
                now,
                parts.station(),
                current,
                parts.materials(),
                parts.checks().corrected(readings),
                parts.rules(),
                parts.organisms(),
                parts.crops(),
                knowledge.at(now, current, parts.checks().corrected(window)),
                health.system());
    }

    private Instant now() {
        return parts.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** Stops; the stores are the caller's to close. */
    @Override
    public void close() {
        ticker.close();
        listeners.close();
    }

    /** The newest board and what it was made of. */
    private record Latest(BoardInputs in, Assessment assessment, Board board) {
        Latest with(Board next) {
            return new Latest(in, assessment, next);
        }
    }
}
