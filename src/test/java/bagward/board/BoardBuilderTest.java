package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Acting;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmPhase;
import bagward.alarm.OtherLimit;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.bag.Origin;
import bagward.bag.Quantile;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.mould.PollinationNote;
import bagward.mould.RiskBand;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoardBuilderTest {
    private final Scenario scenario = new Scenario(20);

    private Board board(double hour) {
        return Scenario.tick(scenario.at(hour), AlarmBook.EMPTY);
    }

    private static BagView bag(Board board, String tag) {
        return board.find(new TagCode(tag)).orElseThrow();
    }

    @Test
    void an_empty_station_has_an_empty_board() {
        Board board = board(1);
        assertEquals(List.of(), board.bags());
        assertEquals(List.of(), board.alarms());
        assertEquals(Optional.empty(), board.newestReading());
        assertEquals(2, board.houses().size());
        assertEquals(Optional.empty(), board.houses().get(0).temperature());
        assertEquals(
                HouseAssessor.DAY_CELLS, board.houses().get(0).temperatureDay().size());
    }

    @Test
    void bags_stand_in_walking_order_not_in_that_of_names() {
        scenario.bag("A-1", Scenario.NORTH, Scenario.AISLE, 1, 0)
                .bag("B-1", Scenario.SOUTH, Scenario.AISLE, 1, 0)
                .bag("C-1", Scenario.SOUTH, Scenario.WINDOW, 10, 0)
                .bag("D-1", Scenario.SOUTH, Scenario.WINDOW, 9, 0);
        List<String> order =
                board(1).bags().stream().map(b -> b.head().tag().value()).toList();
        assertEquals(List.of("D-1", "C-1", "B-1", "A-1"), order);
    }

    @Test
    void a_bag_without_a_sensor_is_estimated_from_its_own_house() {
        scenario.heard(Scenario.SOUTH_POST, 0, 10, 15, 60)
                .heard(Scenario.NORTH_POST, 0, 10, 10, 90)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        Board board = board(10);
        Measure south = bag(board, "S-1").humidity().orElseThrow();
        Measure north = bag(board, "N-1").humidity().orElseThrow();
        assertEquals(Origin.ESTIMATED, south.origin());
        // Half of the exchange is with the wet head: halfway from 60 and from 90 %RH to saturation.
        assertEquals(80, south.value(), 0.5);
        assertEquals(95, north.value(), 0.5);
        assertTrue(south.low() < south.value() && south.value() < south.high());
        assertEquals(Scenario.hours(10).minus(Duration.ofMinutes(5)), south.asOf());
    }

    @Test
    void a_lent_sensor_is_measured_only_while_it_hangs_in_the_bag() {
        TagCode tag = new TagCode("S-1");
        scenario.heard(Scenario.SOUTH_POST, 0, 10, 15, 60)
                .heard(Scenario.SPARE, 0, 10, 16, 88)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
                .change(new RegisterChange.Lend(tag, Scenario.hours(4), Scenario.SPARE.id()))
                .change(new RegisterChange.GiveBack(tag, Scenario.hours(8), Scenario.SPARE.id()));
        BagView before = bag(board(3), "S-1");
        assertEquals(Origin.ESTIMATED, before.humidity().orElseThrow().origin());
        assertEquals(Optional.empty(), before.lentSensor());
        Board during = board(6);
        assertEquals(88, bag(during, "S-1").humidity().orElseThrow().value(), 1e-9);
        assertEquals(
                Origin.MEASURED, bag(during, "S-1").temperature().orElseThrow().origin());
        assertEquals(Optional.of(Scenario.SPARE.id()), bag(during, "S-1").lentSensor());
        assertEquals(Optional.of(tag), during.sensors().get(2).lentTo());
        assertEquals(80, bag(board(10), "S-1").humidity().orElseThrow().value(), 0.5);
    }

    @Test
    void a_damp_night_raises_an_alarm_that_the_bag_shows() {
        scenario.heard(Scenario.NORTH_POST, 0, 12, 12, 92).bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        assertEquals(
                List.of(),
                board(6).alarms().stream().filter(BoardBuilderTest::aboutBag).toList());
        Board board = board(12);
        AlarmView damp = board.alarms().stream()
                .filter(BoardBuilderTest::aboutBag)
                .findFirst()
                .orElseThrow();
        // Closure 0.5: half way from the 92 %RH of the house to saturation; condensation begins above that.
        assertEquals(
                "damp 11 h: 96 %RH now, limit 90 %RH, estimated", damp.alarm().message());
        assertEquals(Scenario.NORTH, damp.spot().orElseThrow().house());
        assertEquals(Optional.of(Priority.LOW), bag(board, "N-1").worst());
        assertEquals(Duration.ofHours(11), bag(board, "N-1").dampFor());
        assertTrue(bag(board, "N-1").risk().wetHours() > 10);
        assertTrue(bag(board, "N-1").risk().band().compareTo(RiskBand.NONE) > 0);
    }

    @Test
    void a_rule_has_the_limit_of_the_house_and_the_material() {
        Rule drier = Acting.withLimits(
                Scenario.DAMP,
                new OtherLimit(Optional.of(Scenario.SOUTH), Optional.of(Scenario.FILM), Optional.empty(), 75),
                new OtherLimit(Optional.of(Scenario.NORTH), Optional.empty(), Optional.empty(), 99));
        scenario.watch(drier)
                .heard(Scenario.SOUTH_POST, 0, 12, 12, 60)
                .heard(Scenario.NORTH_POST, 0, 12, 12, 92)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        assertEquals(
                List.of("damp 11 h: 80 %RH now, limit 75 %RH, estimated"),
                board(12).alarms().stream().map(view -> view.alarm().message()).toList());
    }

    @Test
    void the_surer_a_rule_wants_to_be_the_later_and_less_it_calls() {
        scenario.heard(Scenario.NORTH_POST, 0, 30, 12, 83).bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        List<String> said = Stream.of(Quantile.SURE, Quantile.MIDDLE, Quantile.POSSIBLE)
                .flatMap(quantile -> {
                    scenario.watch(Acting.on(quantile, Scenario.DAMP), Acting.on(quantile, Scenario.MOULD));
                    return board(30).alarms().stream().map(view -> view.rule().id() + " on " + quantile.share());
                })
                .toList();
        // Where the risk calls, the damp of the same time does not.
        assertEquals(List.of("damp on 0.5", "mould on 0.9"), said);
    }

    @Test
    void alarms_stand_with_the_highest_priority_first_then_in_walking_order() {
        scenario.heard(Scenario.SOUTH_POST, 0, 200, 15, 50)
                .bag("A-1", Scenario.SOUTH, Scenario.AISLE, 2, 0)
                .bag("Z-1", Scenario.SOUTH, Scenario.AISLE, 1, 0);
        AlarmBook missed = Scenario.step(scenario.at(198), AlarmBook.EMPTY);
        List<String> order = Scenario.tick(scenario.at(199), missed).alarms().stream()
                .map(view ->
                        view.rule().id() + " " + view.alarm().key().subject().key())
                .toList();
        assertEquals(List.of("silent sensor:north-post", "due bag:Z-1", "due bag:A-1"), order);
    }

    @Test
    void a_silent_house_suppresses_what_depends_on_it_and_only_that() {
        scenario.heard(Scenario.SOUTH_POST, 0, 24, 12, 92)
                .heard(Scenario.NORTH_POST, 0, 12, 12, 92)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        AlarmBook damp = Scenario.step(scenario.at(12), AlarmBook.EMPTY);
        Board board = Scenario.tick(scenario.at(24), damp);
        assertEquals(1, board.setAside().size());
        AlarmView hidden = board.setAside().get(0);
        assertEquals("bag:N-1", hidden.alarm().key().subject().key());
        assertEquals(AlarmPhase.SUPPRESSED, hidden.alarm().phase());
        assertEquals(
                "not known: sensor north-post is silent",
                hidden.alarm().aside().orElseThrow().why());
        List<String> listed = board.alarms().stream()
                .map(view -> view.alarm().key().subject().key())
                .toList();
        assertEquals(List.of("sensor:north-post", "bag:S-1"), listed);
        assertTrue(board.sensors().get(1).silent());
        assertFalse(board.sensors().get(0).silent());
        assertEquals(12, bag(board, "N-1").risk().unknownHours(), 1);
    }

    @Test
    void a_low_battery_is_an_alarm_until_its_sensor_falls_silent() {
        scenario.heard(Scenario.SOUTH_POST, 0, 30, 12, 60)
                .heard(Scenario.NORTH_POST, 0, 24, 12, 60)
                .battery(Scenario.NORTH_POST, 9, 12);
        Board low = board(12);
        assertEquals(
                "battery of north-post at 12 %, limit 15 %",
                low.alarms().get(0).alarm().message());
        Board silent = Scenario.tick(scenario.at(30), Scenario.step(scenario.at(12), AlarmBook.EMPTY));
        assertEquals(
                List.of("silent"),
                silent.alarms().stream()
                        .map(view -> view.alarm().key().rule().value())
                        .toList());
        assertEquals(
                "sensor north-post is silent",
                silent.setAside().get(0).alarm().aside().orElseThrow().why());
    }

    @Test
    void a_spare_sensor_in_the_drawer_is_not_missed() {
        scenario.heard(Scenario.SOUTH_POST, 0, 10, 15, 60).heard(Scenario.NORTH_POST, 0, 10, 15, 60);
        assertEquals(List.of(), board(10).alarms());
        assertFalse(board(10).sensors().get(2).silent());
    }

    @Test
    void a_sensor_that_was_never_heard_is_missed_after_its_patience() {
        AlarmBook first = Scenario.step(scenario.at(1), AlarmBook.EMPTY);
        assertEquals(List.of(), Scenario.tick(scenario.at(1.1), first).alarms());
        assertEquals(2, Scenario.tick(scenario.at(1.3), first).alarms().size());
    }

    @Test
    void a_bag_taken_off_is_off_the_board_and_its_alarm_with_it() {
        scenario.heard(Scenario.NORTH_POST, 0, 12, 12, 92)
                .heard(Scenario.SOUTH_POST, 0, 12, 12, 60)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        AlarmBook damp = Scenario.step(scenario.at(11.9), AlarmBook.EMPTY);
        assertEquals(1, damp.alarms().size());
        scenario.change(new RegisterChange.TakeOff(new TagCode("N-1"), Scenario.hours(11.95)));
        Board board = Scenario.tick(scenario.at(12), damp);
        assertEquals(List.of(), board.bags());
        assertEquals(List.of(), board.alarms());
    }

    @Test
    void a_bag_of_a_material_that_is_no_longer_configured_is_shown_without_an_estimate() {
        scenario.heard(Scenario.NORTH_POST, 0, 5, 12, 92).bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        BoardInputs in = scenario.at(5, scenario.readings(), Map.of());
        BagView bag = bag(Scenario.tick(in, AlarmBook.EMPTY), "N-1");
        assertEquals(Optional.empty(), bag.humidity());
        assertEquals(4, bag.risk().unknownHours(), 0.1);
    }

    @Test
    void a_day_line_keeps_gaps_as_gaps() {
        scenario.heard(Scenario.SOUTH_POST, 0, 10, 15, 60).heard(Scenario.SOUTH_POST, 14, 24, 17, 60);
        List<Double> line = board(24).houses().get(0).temperatureDay();
        assertEquals(48, line.size());
        assertEquals(15, line.get(10), 1e-9);
        assertTrue(line.get(24).isNaN());
        assertEquals(17, line.get(46), 1e-9);
    }

    @Test
    void a_forgotten_bag_is_looked_at_over_its_last_weeks_only() {
        scenario.heard(Scenario.NORTH_POST, 0, 24 * 40, 12, 60).bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);
        BoardInputs in = scenario.at(24 * 40);
        var head = in.register().heads().iterator().next();
        BaggedClimate climate = BoardBuilder.climate(in, head, head.baggings().get(0));
        assertEquals(21 * 1440 + 1, climate.bag().grid().size());
        assertEquals(
                80,
                bag(Scenario.tick(in, AlarmBook.EMPTY), "N-1")
                        .humidity()
                        .orElseThrow()
                        .value(),
                0.5);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void the_same_readings_in_any_order_and_some_twice_give_the_same_board(long seed) {
        mixedDay();
        Random random = new Random(seed);
        List<Reading> shuffled = new ArrayList<>(scenario.readings());
        shuffled.addAll(scenario.readings().subList(100, 300));
        Collections.shuffle(shuffled, random);
        BoardInputs other = scenario.at(24, shuffled, Scenario.materials());
        assertEquals(board(24), Scenario.tick(other, AlarmBook.EMPTY));
    }

    @Test
    void readings_that_come_late_give_the_board_of_readings_in_time() {
        mixedDay();
        List<Reading> all = scenario.readings();
        Instant gateway = Scenario.hours(8);
        List<Reading> early = all.stream()
                .filter(r ->
                        r.measuredAt().isBefore(gateway) || r.series().sensor().equals(Scenario.SOUTH_POST.id()))
                .toList();
        BoardInputs without = scenario.at(24, early, Scenario.materials());
        Board inTime = board(24);
        assertFalse(inTime.equals(Scenario.tick(without, AlarmBook.EMPTY)));
        List<Reading> late = new ArrayList<>(early);
        all.stream().filter(r -> !early.contains(r)).forEach(late::add);
        assertEquals(inTime, Scenario.tick(scenario.at(24, late, Scenario.materials()), AlarmBook.EMPTY));
    }

    @Test
    void readings_after_now_are_not_looked_at() {
        scenario.heard(Scenario.SOUTH_POST, 0, 6, 15, 60)
                .heard(Scenario.NORTH_POST, 0, 6, 15, 60)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1);
        scenario.readings()
                .add(Reading.of(
                        scenario.readings().get(0).series(), Scenario.hours(5.5).plusSeconds(10), 35));
        Board before = board(5.5);
        List<Reading> known = scenario.readings().stream()
                .filter(r -> !r.measuredAt().isAfter(Scenario.hours(5.5)))
                .toList();
        assertEquals(before, Scenario.tick(scenario.at(5.5, known, Scenario.materials()), AlarmBook.EMPTY));
    }

    private void mixedDay() {
        scenario.heard(Scenario.SOUTH_POST, 0, 9, 12, 92)
                .heard(Scenario.SOUTH_POST, 9, 24, 19, 55)
                .heard(Scenario.NORTH_POST, 0, 5, 11, 94)
                .heard(Scenario.NORTH_POST, 7, 24, 18, 70)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
                .bag("S-2", Scenario.SOUTH, Scenario.AISLE, 4, 2)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 3);
    }

    private static boolean aboutBag(AlarmView view) {
        return view.spot().isPresent();
    }

    @Test
    void a_swap_neither_washes_the_risk_of_the_head_away_nor_moves_its_day() {
        Scenario scenario = new Scenario(4)
                .heard(Scenario.SOUTH_POST, 0, 20, 15, 99)
                .heard(Scenario.SOUTH_POST, 20, 60, 20, 40)
                .bag("T-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1);
        BagView before = Scenario.tick(scenario.at(19), AlarmBook.EMPTY).bags().get(0);
        assertEquals(RiskBand.HIGH, before.risk().band());
        scenario.change(new RegisterChange.Swap(new TagCode("T-1"), Scenario.hours(30), Scenario.FILM));
        BagView after = Scenario.tick(scenario.at(50), AlarmBook.EMPTY).bags().get(0);
        assertEquals(Scenario.hours(30), after.putOn());
        assertEquals(RiskBand.HIGH, after.risk().band());
        assertEquals(before.due(), after.due());
        assertTrue(after.care().orElseThrow().notes().stream()
                .anyMatch(note -> note.kind() == PollinationNote.Kind.SEED_SET));
    }
}
