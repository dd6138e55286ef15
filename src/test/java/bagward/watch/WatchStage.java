package bagward.watch;

import static org.awaitility.Awaitility.await;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.alarm.SystemState;
import bagward.bag.Line;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.clockwork.HandClock;
import bagward.station.House;
import bagward.station.Spot;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A running watch on a real store in a folder of its own, with a clock that the test sets. */
abstract class WatchStage {
    static final WatchSettings QUICK =
            new WatchSettings(Duration.ofMillis(5), Duration.ofMillis(50), Duration.ofDays(22), Duration.ofMinutes(5));

    static final TagCode TAG = new TagCode("R26-0147");
    static final AlarmKey DAMP = new AlarmKey(new RuleId("damp"), new Subject.Bag(TAG));

    static final Intake TWENTY_FOUR = new Intake(24, 0, 0, 0, 0, 0);

    final HandClock clock = new HandClock(hour(0));
    Path file;
    SqliteStores stores;
    FailingAlarms alarms;
    LiveWatch watch;
    volatile WatchedParts collector = new WatchedParts(
            List.of(new Health.Part("collector", true, "receives")),
            Optional.of(hour(1)),
            TWENTY_FOUR,
            SystemState.WELL);

    private volatile Runnable onCollector = () -> {};

    @BeforeEach
    void open(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
        stores = SqliteStores.open(file, clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
    }

    @AfterEach
    void close() {
        watch.close();
        stores.close();
    }

    LiveWatch open() {
        return new LiveWatch(Stations.parts(clock, stores, alarms), this::collector, QUICK);
    }

    private WatchedParts collector() {
        onCollector.run();
        return collector;
    }

    /**
     * Lets each board from now on wait while it looks at the other parts.
     *
     * @return is at zero once one waits
     */
    CountDownLatch holdBoards(CountDownLatch until) {
        CountDownLatch begun = new CountDownLatch(1);
        onCollector = () -> {
            begun.countDown();
            try {
                until.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        };
        return begun;
    }

    /** Begins with another store, in which there is nothing. */
    void anew() {
        close();
        file = file.resolveSibling("anew.db");
        stores = SqliteStores.open(file, clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
    }

    void restart() {
        close();
        stores = SqliteStores.open(file, clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
    }

    void start() {
        watch.start();
    }

    static Instant hour(double hours) {
        return Scenario.START.plusSeconds(Math.round(hours * 3600));
    }

    static RegisterChange putOn(double hour) {
        return putOn(TAG, 3, hour);
    }

    static RegisterChange putOn(String tag, int spot) {
        return putOn(new TagCode(tag), spot, 0);
    }

    static RegisterChange putOn(TagCode tag, int spot, double hour) {
        House house = Stations.station().houses().get(0);
        return new RegisterChange.PutOn(
                tag,
                hour(hour),
                new Spot(house.id(), house.bays().get(0).id(), spot),
                Stations.material(),
                new Line("Hvidå 12"),
                new Line("Hvidå 12"),
                new Pollination(hour(hour), "Mirja", PollinationKind.SELF, 8, Optional.empty()));
    }

    /** Readings of the first house every five minutes in [from, to) hours. */
    static List<Reading> house(double from, double to, double percent) {
        List<Reading> readings = new ArrayList<>();
        for (Instant at = hour(from); at.isBefore(hour(to)); at = at.plusSeconds(300)) {
            readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.TEMPERATURE), at, 12));
            readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.HUMIDITY), at, percent));
        }
        return readings;
    }

    void hear(List<Reading> readings) {
        stores.readings().append(readings);
        watch.stored(readings);
    }

    /** Sets the clock and waits until a board of that time is there. */
    Board boardAt(double hour) {
        clock.set(hour(hour));
        await().until(() -> watch.board().at().equals(hour(hour)));
        return watch.board();
    }

    Optional<AlarmPhase> phase() {
        return alarms.loadAlarms().find(DAMP).map(Alarm::phase);
    }

    Health.Part part(String name) {
        return watch.health().parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
