package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import bagward.alarm.SystemState;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.BoardInputs;
import bagward.board.Knowledge;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.clockwork.HandClock;
import bagward.station.HouseId;
import bagward.store.SqliteStores;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of what was learnt, on a real store. */
class KnowledgeKeeperTest {
    private static final HouseId HOUSE = Stations.station().houses().get(0).id();

    private final HandClock clock = new HandClock(Scenario.START);
    private final SqliteStores stores;
    private final KnowledgeKeeper keeper;

    KnowledgeKeeperTest(@TempDir Path folder) {
        stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
        keeper = new KnowledgeKeeper(Stations.parts(clock, stores, stores.alarms()), Duration.ofDays(1));
    }

    @AfterEach
    void close() {
        stores.close();
    }

    /** A loan from hour 12 to 60; its readings lie in the store, and the last day of them in memory. */
    private BoardInputs lent(double hour) {
        Scenario scenario = hour > 60 ? Scenario.lentAndGivenBack() : Scenario.lent();
        stores.readings().append(scenario.upTo(hour));
        return scenario.at(hour);
    }

    private Knowledge at(BoardInputs in) {
        return keeper.at(in.now(), in.register(), in.readings());
    }

    @Test
    void within_ten_minutes_nothing_is_learnt_anew() {
        BoardInputs in = lent(60);

        Knowledge first = at(in);
        Knowledge second = keeper.at(in.now().plusSeconds(599), in.register(), in.readings());

        assertEquals(1, first.taught().size());
        assertSame(first, second);
    }

    @Test
    void a_register_that_changed_is_looked_at_at_once() {
        BoardInputs in = lent(60);
        Knowledge first = at(in);

        Knowledge without =
                keeper.at(in.now().plusSeconds(1), new Scenario(20).at(60).register(), in.readings());

        assertEquals(1, first.taught().size());
        assertEquals(0, without.taught().size());
    }

    @Test
    void an_ended_loan_longer_ago_than_memory_reaches_teaches_from_the_store() {
        BoardInputs in = lent(24 * 9);

        assertEquals(1, at(in).taught().get(0).lesson().stream().count());
    }

    @Test
    void the_week_of_a_house_is_told_anew_within_the_hour_when_its_readings_come_late() {
        Scenario scenario = Scenario.lent();
        BoardInputs in = scenario.at(60);
        Instant now = in.now().plusSeconds(1200);
        double before = keeper.at(now, in.register(), in.readings())
                .week(HOUSE)
                .orElseThrow()
                .unknownHours();
        stores.readings().append(scenario.upTo(60));

        double after = keeper.at(now.plusSeconds(600), in.register(), in.readings())
                .week(HOUSE)
                .orElseThrow()
                .unknownHours();

        assertEquals(168, before);
        assertEquals(168 - 60, after, 1);
    }

    @Test
    void a_reading_that_comes_late_changes_what_an_ended_loan_taught() {
        BoardInputs in = lent(24 * 9);
        Knowledge before = at(in);
        List<Reading> late = Scenario.lentLate();
        stores.readings().append(late);
        keeper.heard(late);

        Knowledge after = keeper.at(in.now().plusSeconds(600), in.register(), in.readings());

        assertNotEquals(before.taught(), after.taught());
        keeper.forget();
        assertEquals(
                after.taught(),
                keeper.at(in.now().plusSeconds(600), in.register(), in.readings())
                        .taught());
    }

    @Test
    void a_store_that_is_away_leaves_what_was_known() {
        BoardInputs in = lent(24 * 9);
        Knowledge before = at(in);
        stores.close();

        assertSame(before, keeper.at(in.now().plusSeconds(600), in.register(), in.readings()));
    }

    @Test
    void a_lent_sensor_teaches_the_running_watch() {
        BoardInputs in = lent(60);
        TagCode other = new TagCode("S-2");
        stores.register().append(in.register().changes(), "Mirja", in.now());
        clock.set(in.now());
        try (LiveWatch watch = new LiveWatch(
                Stations.parts(clock, stores, stores.alarms()),
                () -> new WatchedParts(List.of(), Optional.empty(), Intake.NONE, SystemState.WELL),
                WatchSettings.USUAL)) {
            var belief = watch.board().find(other).orElseThrow().insight().belief();
            assertEquals(1, belief.orElseThrow().sensoredBags());
            watch.change(List.of(new RegisterChange.GiveBack(new TagCode("S-1"), in.now(), Scenario.spare())), "Mirja");
            belief = watch.board().find(other).orElseThrow().insight().belief();
            assertEquals(1, belief.orElseThrow().sensoredBags());
        }
    }
}
