package bagward.site;

import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.bag.BagClimate;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.MaterialId;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.climate.Span;
import bagward.mould.Crop;
import bagward.station.HouseId;
import bagward.watch.BagHistory;
import bagward.watch.Health;
import bagward.watch.Intake;
import bagward.watch.PlaceStay;
import bagward.watch.Watch;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** A watch of the invented station, with the real rules of the register and boards made by hand. */
final class SampleWatch implements Watch {
    private final Clock clock;
    private final RegisterRules rules = new RegisterRules(
            SampleStation.STATION,
            SampleStation.MATERIALS.stream().map(BagMaterial::id).collect(Collectors.toSet()),
            SampleStation.CROPS.stream().map(Crop::id).collect(Collectors.toSet()));
    private final List<Consumer<Board>> listeners = new CopyOnWriteArrayList<>();
    private final Set<AlarmKey> seen = new HashSet<>();
    private final SampleAside aside = new SampleAside();
    private final List<String> entries = new ArrayList<>();
    private Register register;
    private Board board;
    private boolean well = true;
    private Optional<RuntimeException> trouble = Optional.empty();

    SampleWatch(Clock clock) {
        this.clock = clock;
        this.register = rules.apply(Register.EMPTY, SampleRegister.changes(clock.instant()));
        this.board = SampleBoard.of(register, clock.instant(), seen);
    }

    static List<MaterialId> materials() {
        return SampleStation.MATERIALS.stream().map(BagMaterial::id).toList();
    }

    /** Shows another board from now on. */
    synchronized void show(Board next) {
        board = next;
        listeners.forEach(l -> l.accept(next));
    }

    /** Makes a new board for the time it is now. */
    synchronized void tick() {
        show(aside.on(SampleBoard.of(register, clock.instant(), seen)));
    }

    /** Pretends that a part has stopped. */
    void fallIll() {
        well = false;
    }

    /** Fails every entry from now on. */
    void fail(RuntimeException with) {
        trouble = Optional.of(with);
    }

    /** Who entered what, in the order of entry. */
    synchronized List<String> entries() {
        return List.copyOf(entries);
    }

    int listeners() {
        return listeners.size();
    }

    @Override
    public synchronized Board board() {
        return board;
    }

    @Override
    public Subscription listen(Consumer<Board> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    @Override
    public synchronized Register register() {
        return register;
    }

    @Override
    public synchronized void change(List<RegisterChange> changes, String by) {
        trouble.ifPresent(t -> {
            throw t;
        });
        register = rules.apply(register, changes);
        changes.forEach(c -> entries.add(by + ": " + c));
        tick();
    }

    @Override
    public synchronized Set<AlarmKey> acknowledge(Set<AlarmKey> keys, String by) {
        Set<AlarmKey> done = board.alarms().stream()
                .map(a -> a.alarm().key())
                .filter(key -> keys.contains(key) && seen.add(key))
                .collect(Collectors.toSet());
        tick();
        return done;
    }

    @Override
    public synchronized void act(AlarmAct act) {
        aside.act(board, act, clock.instant());
        entries.add(act.by() + ": " + act);
        tick();
    }

    @Override
    public List<Rule> rules() {
        return SampleStation.RULES;
    }

    @Override
    public Optional<BagHistory> history(TagCode tag) {
        Instant now = clock.instant();
        Optional<Head> head = register().find(tag);
        Duration measured = tag.equals(SampleRegister.MEASURED) ? Duration.ofHours(30) : Duration.ZERO;
        return head.map(h -> SampleClimate.history(h, now, measured));
    }

    @Override
    public BagClimate inBag(Head head, Bagging bagging) {
        return SampleClimate.history(head, clock.instant(), Duration.ZERO).bag();
    }

    @Override
    public Optional<PlaceStay> stay(HouseId place, Span span) {
        return SampleDrying.stay(place, span);
    }

    @Override
    public Health health() {
        return new Health(
                List.of(
                        new Health.Part("collector", well, well ? "connected" : "no connection for 3 min"),
                        new Health.Part("store", true, "writes")),
                Optional.of(board().at()),
                Duration.ofMillis(12),
                Optional.of(board().at()),
                new Intake(1234, 5, 1, 0, 40, 2.5),
                3);
    }
}
