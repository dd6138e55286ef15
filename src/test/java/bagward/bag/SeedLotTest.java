package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lose;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.WithdrawDrying;
import bagward.fault.Fault;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is done to a seed lot after its harvest. */
class SeedLotTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final TagCode H1 = new TagCode("H1");
    private static final Optional<HouseId> ROOM = Optional.of(Stations.SEEDS);
    private static final Optional<HouseId> ELSEWHERE = Optional.empty();
    private static final MeasuredMoisture MEASURED = MeasuredMoisture.of(7.5, "meter");

    private final RegisterRules rules = new RegisterRules(Stations.station(), Set.of(Stations.PAPER));

    @Test
    void a_lot_hangs_from_when_it_was_hung_until_it_was_packed() {
        Drying drying = drying(putOn(), harvest(50), hung(51, ROOM), packed(60));
        assertEquals(List.of(new DryingStay(ROOM, day(51), Optional.of(day(60)))), drying.stays());
        assertEquals(List.of(new Packing(day(60), "clean", Optional.of(MEASURED))), drying.packings());
        assertTrue(drying.at(day(55)).isPresent());
        assertTrue(drying.at(day(60)).isEmpty());
    }

    @Test
    void a_lot_that_is_moved_hangs_in_one_place_at_a_time() {
        Drying drying = drying(putOn(), harvest(50), hung(50, ELSEWHERE), hung(54, ROOM));
        assertEquals(
                List.of(
                        new DryingStay(ELSEWHERE, day(50), Optional.of(day(54))),
                        new DryingStay(ROOM, day(54), Optional.empty())),
                drying.stays());
    }

    @Test
    void a_lot_that_was_packed_too_moist_may_hang_again_and_be_packed_again() {
        Drying drying = drying(putOn(), harvest(50), hung(50, ROOM), packed(52), hung(53, ROOM), packed(59));
        assertEquals(2, drying.stays().size());
        assertEquals(2, drying.packings().size());
    }

    @Test
    void what_contradicts_the_rest_is_refused_with_its_remedy() {
        refused("the head was not harvested by then", putOn(), hung(51, ROOM));
        refused("the head was not harvested by then", putOn(), harvest(50), hung(49, ROOM));
        refused("the head was not harvested by then", putOn(), new Lose(H1, day(20), ""), hung(51, ROOM));
        String rule = "it is no drying place of the station";
        refused(rule, putOn(), harvest(50), hung(51, Optional.of(new HouseId("loft"))));
        refused(rule, putOn(), harvest(50), hung(51, Optional.of(Stations.NORTH)));
        refused("it hangs there already", putOn(), harvest(50), hung(51, ROOM), hung(52, ROOM));
        refused("the lot does not hang to dry at that time", putOn(), harvest(50), packed(51));
        refused("the lot does not hang to dry at that time", putOn(), harvest(50), hung(52, ROOM), packed(51));
        refused(
                "the lot does not hang to dry at that time",
                putOn(),
                harvest(50),
                hung(51, ROOM),
                packed(52),
                packed(53));
    }

    @Test
    void an_entry_that_was_wrong_is_withdrawn_unless_a_later_one_rests_on_it() {
        List<RegisterChange> before = List.of(putOn(), harvest(50), hung(51, ROOM), packed(60));
        Register register = rules.apply(Register.EMPTY, before);

        Drying unpacked = rules.apply(register, List.of(withdrawn(60, DryingStep.PACKED)))
                .find(H1)
                .orElseThrow()
                .drying();
        assertEquals(List.of(new DryingStay(ROOM, day(51), Optional.empty())), unpacked.stays());
        assertEquals(List.of(), unpacked.packings());

        Fault fault = faults(register, withdrawn(51, DryingStep.HUNG)).get(0);
        assertEquals("change 1, tag", fault.place(), "the withdrawal is to blame, not what was entered before");
        assertEquals("the lot does not hang to dry at that time", fault.rule());
        refused("nothing of the kind was entered for that time", putOn(), harvest(50), withdrawn(51, DryingStep.HUNG));
    }

    @Test
    void both_entries_can_be_withdrawn_one_after_the_other_and_entered_anew_at_another_minute() {
        List<RegisterChange> before = List.of(putOn(), harvest(50), hung(51, ROOM), packed(60));
        Register register = rules.apply(Register.EMPTY, before);
        Register none = rules.apply(
                rules.apply(register, List.of(withdrawn(60, DryingStep.PACKED))),
                List.of(withdrawn(51, DryingStep.HUNG)));
        assertEquals(Drying.NONE, none.find(H1).orElseThrow().drying());

        assertEquals(
                "an entry for that very time was withdrawn",
                faults(none, hung(51, ELSEWHERE)).get(0).rule());
        assertEquals(
                "nothing of the kind was entered for that time",
                faults(none, withdrawn(51, DryingStep.HUNG)).get(0).rule());
        Register anew = rules.apply(none, List.of(hung(52, ELSEWHERE)));
        assertEquals(1, anew.find(H1).orElseThrow().drying().stays().size());
    }

    @Test
    void a_harvest_at_the_very_time_it_is_hung_comes_first() {
        assertEquals(1, drying(hung(50, ROOM), harvest(50), putOn()).stays().size());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_order_of_entry_does_not_matter(long seed) {
        List<RegisterChange> changes = new ArrayList<>(List.of(
                putOn(),
                harvest(50),
                hung(50, ELSEWHERE),
                hung(51, ROOM),
                withdrawn(51, DryingStep.HUNG),
                hung(52, ROOM),
                packed(60)));
        Register inOrder = rules.apply(Register.EMPTY, changes);
        Collections.shuffle(changes, new Random(seed));
        assertEquals(inOrder, rules.apply(Register.EMPTY, changes));
        assertEquals(2, inOrder.find(H1).orElseThrow().drying().stays().size());
    }

    @Test
    void a_moisture_that_seed_cannot_have_or_without_its_method_is_refused() {
        assertThrows(ImpossibleValueException.class, () -> MeasuredMoisture.of(61, "oven"));
        assertThrows(ImpossibleValueException.class, () -> MeasuredMoisture.of(-0.1, "oven"));
        assertThrows(ImpossibleValueException.class, () -> MeasuredMoisture.of(7, " "));
    }

    private Drying drying(RegisterChange... changes) {
        return rules.apply(Register.EMPTY, List.of(changes))
                .find(H1)
                .orElseThrow()
                .drying();
    }

    private void refused(String rule, RegisterChange... changes) {
        assertEquals(rule, faults(Register.EMPTY, changes).get(0).rule());
    }

    private List<Fault> faults(Register before, RegisterChange... changes) {
        return assertThrows(RefusedInputException.class, () -> rules.apply(before, List.of(changes)))
                .faults();
    }

    private static PutOn putOn() {
        return new PutOn(
                H1,
                START,
                Stations.spot(1),
                Stations.PAPER,
                new Line("Tessel"),
                new Line("Tessel"),
                new Pollination(START, "Ida", PollinationKind.SELF, 8, Optional.empty()));
    }

    private static RegisterChange harvest(int day) {
        return new Harvest(H1, day(day), "");
    }

    private static RegisterChange hung(int day, Optional<HouseId> where) {
        return new HangToDry(H1, day(day), where);
    }

    private static RegisterChange packed(int day) {
        return new Pack(H1, day(day), "clean", Optional.of(MEASURED));
    }

    private static RegisterChange withdrawn(int day, DryingStep step) {
        return new WithdrawDrying(H1, day(day), step);
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }
}
