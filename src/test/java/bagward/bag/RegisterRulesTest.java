package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.Lose;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.climate.SensorId;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.station.BayId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RegisterRulesTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final TagCode H1 = new TagCode("H1");
    private static final TagCode H2 = new TagCode("H2");

    private final RegisterRules rules = new RegisterRules(Stations.station(), Set.of(Stations.PAPER, Stations.MESH));

    @Test
    void a_bag_that_is_put_on_is_on() {
        Register register = rules.apply(Register.EMPTY, List.of(putOn(H1, 0, 1)));

        assertEquals(HeadState.BAGGED, register.find(H1).orElseThrow().stateAt(day(3)));
    }

    @Test
    void a_bag_cannot_be_put_on_where_seed_dries() {
        PutOn there = new PutOn(
                H1,
                day(0),
                new Spot(Stations.SEEDS, new BayId("a"), 1),
                Stations.PAPER,
                putOn(H1, 0, 1).seedParent(),
                putOn(H1, 0, 1).pollenParent(),
                putOn(H1, 0, 1).pollination(),
                Optional.empty());
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> rules.apply(Register.EMPTY, List.of(there)));
        assertEquals(1, refused.faults().size());
        assertTrue(refused.getMessage().contains("seed dries there"), refused.getMessage());
    }

    @Test
    void a_swap_ends_one_bagging_and_starts_the_next() {
        Register register = rules.apply(Register.EMPTY, List.of(putOn(H1, 0, 1), new Swap(H1, day(2), Stations.MESH)));

        assertEquals(
                List.of(
                        new Bagging(Stations.PAPER, day(0), Optional.of(day(2))),
                        new Bagging(Stations.MESH, day(2), Optional.empty())),
                register.find(H1).orElseThrow().baggings());
    }

    @Test
    void taking_the_bag_off_ends_the_loan() {
        Register register = rules.apply(
                Register.EMPTY,
                List.of(putOn(H1, 0, 1), new Lend(H1, day(1), Stations.SPARE), new TakeOff(H1, day(7))));

        assertEquals(List.of(new SensorLoan(Stations.SPARE, H1, day(1), Optional.of(day(7)))), register.loans());
    }

    @Test
    void a_harvest_ends_bag_and_loan() {
        Register register = rules.apply(
                Register.EMPTY,
                List.of(putOn(H1, 0, 1), new Lend(H1, day(1), Stations.SPARE), new Harvest(H1, day(9), "")));

        assertEquals(day(9), register.loans().get(0).to().orElseThrow());
        assertEquals(
                day(9),
                register.find(H1).orElseThrow().baggings().get(0).takenOff().orElseThrow());
    }

    @Test
    void a_swap_leaves_the_sensor_on_the_head() {
        Register register = rules.apply(
                Register.EMPTY,
                List.of(putOn(H1, 0, 1), new Lend(H1, day(1), Stations.SPARE), new Swap(H1, day(2), Stations.PAPER)));

        assertTrue(register.loans().get(0).to().isEmpty());
    }

    @Test
    void a_spot_and_a_sensor_are_free_at_the_very_time_a_bag_comes_off() {
        Register register = rules.apply(
                Register.EMPTY,
                List.of(
                        putOn(H2, 7, 1),
                        new Lend(H2, day(7), Stations.SPARE),
                        putOn(H1, 0, 1),
                        new Lend(H1, day(0), Stations.SPARE),
                        new TakeOff(H1, day(7))));

        assertEquals(2, register.loans().size());
    }

    @Test
    void a_bag_entered_late_collides_with_one_entered_before() {
        Register register = rules.apply(Register.EMPTY, List.of(putOn(H1, 5, 1)));

        List<Fault> faults = refused(register, putOn(H2, 3, 1));

        assertEquals("change 1, spot", faults.get(0).place());
    }

    @Test
    void an_end_entered_late_collides_with_what_was_entered_after_it() {
        Register register = rules.apply(Register.EMPTY, List.of(putOn(H1, 0, 1), new Swap(H1, day(4), Stations.PAPER)));

        List<Fault> faults = refused(register, new TakeOff(H1, day(2)));

        assertEquals("change 1, tag", faults.get(0).place());
    }

    @Test
    void every_fault_is_found_with_its_change_and_field() {
        List<Fault> faults = refused(
                Register.EMPTY,
                new TakeOff(H2, day(1)),
                putOn(H1, 0, 99),
                putOn(H2, 2, 1),
                new Lend(H2, day(3), Stations.FIXED),
                new Lend(H2, day(3), new SensorId("nowhere")),
                new Swap(H2, day(4), new MaterialId("papr")),
                new GiveBack(H2, day(5), Stations.SPARE),
                new TakeOff(H2, day(2)),
                putOn(H2, 6, 2));

        assertEquals(
                List.of(
                        "change 1, tag",
                        "change 2, spot",
                        "change 4, sensor",
                        "change 5, sensor",
                        "change 6, material",
                        "change 7, sensor",
                        "change 8, tag",
                        "change 9, tag"),
                faults.stream().map(Fault::place).toList());
    }

    @Test
    void a_sensor_hangs_in_one_bag_and_a_bag_has_one_sensor() {
        List<Fault> faults = refused(
                Register.EMPTY,
                putOn(H1, 0, 1),
                putOn(H2, 0, 2),
                new Lend(H1, day(1), Stations.SPARE),
                new Lend(H2, day(2), Stations.SPARE),
                new Lend(H1, day(3), Stations.OTHER_SPARE));

        assertEquals(
                List.of("change 4, sensor", "change 5, sensor"),
                faults.stream().map(Fault::place).toList());
    }

    @Test
    void a_refused_head_is_refused_once_and_not_again_for_each_later_change() {
        List<Fault> faults = refused(Register.EMPTY, putOn(H1, 0, 99), new TakeOff(H1, day(7)));

        assertEquals(1, faults.size());
    }

    @Test
    void a_self_has_equal_parents_and_a_cross_has_not() {
        assertEquals(
                "change 1, pollen_parent",
                refused(Register.EMPTY, putOn(H1, 0, 1, PollinationKind.CROSS, "Tessel"))
                        .get(0)
                        .place());
        assertEquals(
                "change 1, pollen_parent",
                refused(Register.EMPTY, putOn(H1, 0, 1, PollinationKind.SELF, "Otava"))
                        .get(0)
                        .place());
    }

    @Test
    void nothing_happens_to_a_head_after_its_end() {
        List<Fault> faults =
                refused(Register.EMPTY, putOn(H1, 0, 1), new Lose(H1, day(2), "broken"), new TakeOff(H1, day(3)));

        assertEquals("change 3, tag", faults.get(0).place());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void the_order_of_entry_does_not_matter(long seed) {
        Random random = new Random(seed);
        List<RegisterChange> changes = season(random);
        Register inOneGo = rules.apply(Register.EMPTY, changes);

        Collections.shuffle(changes, random);
        assertEquals(inOneGo, rules.apply(Register.EMPTY, changes));
        assertEquals(inOneGo, entered(changes));
    }

    /** Enters head by head, each with all that was done to it, in the order in which the heads stand in the list. */
    private Register entered(List<RegisterChange> changes) {
        Map<TagCode, List<RegisterChange>> byHead = new LinkedHashMap<>();
        changes.forEach(
                c -> byHead.computeIfAbsent(c.tag(), t -> new ArrayList<>()).add(c));
        Register register = Register.EMPTY;
        for (List<RegisterChange> head : byHead.values()) {
            register = rules.apply(register, head);
        }
        return register;
    }

    /** Heads one after the other on three spots, with swaps, loans and ends at random whole hours. */
    private static List<RegisterChange> season(Random random) {
        List<RegisterChange> changes = new ArrayList<>();
        for (int spot = 1; spot <= 3; spot++) {
            Instant free = START;
            for (int n = 0; n < 6; n++) {
                TagCode tag = new TagCode("S" + spot + "-" + n);
                Instant on = free.plus(Duration.ofHours(random.nextInt(30)));
                Instant off = on.plus(Duration.ofHours(48 + random.nextInt(150)));
                changes.add(putOn(tag, on, spot, PollinationKind.SELF, "Tessel"));
                if (random.nextBoolean()) {
                    changes.add(new Swap(tag, on.plus(Duration.ofHours(1 + random.nextInt(46))), Stations.MESH));
                }
                if (spot < 3 && random.nextBoolean()) {
                    SensorId sensor = spot == 1 ? Stations.SPARE : Stations.OTHER_SPARE;
                    Instant lent = on.plus(Duration.ofHours(random.nextInt(20)));
                    changes.add(new Lend(tag, lent, sensor));
                    if (random.nextBoolean()) {
                        changes.add(new GiveBack(tag, lent.plus(Duration.ofHours(20)), sensor));
                    }
                }
                changes.add(random.nextBoolean() ? new TakeOff(tag, off) : new Harvest(tag, off, ""));
                free = off;
            }
        }
        return changes;
    }

    private List<Fault> refused(Register register, RegisterChange... changes) {
        return assertThrows(RefusedInputException.class, () -> rules.apply(register, List.of(changes)))
                .faults();
    }

    private static PutOn putOn(TagCode tag, int day, int spot) {
        return putOn(tag, day, spot, PollinationKind.SELF, "Tessel");
    }

    private static PutOn putOn(TagCode tag, int day, int spot, PollinationKind kind, String pollen) {
        return putOn(tag, day(day), spot, kind, pollen);
    }

    private static PutOn putOn(TagCode tag, Instant at, int spot, PollinationKind kind, String pollen) {
        return new PutOn(
                tag,
                at,
                Stations.spot(spot),
                Stations.PAPER,
                new Line("Tessel"),
                new Line(pollen),
                new Pollination(at, "Ida", kind, 8, Optional.empty()));
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }
}
