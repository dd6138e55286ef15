package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
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

/** Bags that were used before. */
class UsedBagTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final TagCode A = new TagCode("A");
    private static final TagCode B = new TagCode("B");
    private static final TagCode C = new TagCode("C");

    private final RegisterRules rules = new RegisterRules(Stations.station(), Set.of(Stations.PAPER, Stations.MESH));

    @Test
    void a_bag_that_nobody_calls_used_is_new() {
        Register register = register(putOn(A, 0));
        assertEquals(List.of(), BagUses.before(register, bagging(register, A, 0)));
    }

    @Test
    void the_uses_of_a_bag_are_followed_back_over_several_heads_oldest_first() {
        Register register = register(
                putOn(A, 0),
                off(A, 7),
                putOn(B, 10, A),
                off(B, 17),
                putOn(C, 20),
                new Swap(C, day(22), Stations.PAPER, Optional.of(UsedBefore.on(B))));
        assertEquals(
                List.of(A, B),
                BagUses.before(register, bagging(register, C, 1)).stream()
                        .map(use -> use.head().tag())
                        .toList());
        assertEquals(List.of(), BagUses.before(register, bagging(register, C, 0)));
    }

    @Test
    void of_several_bags_of_a_head_the_last_one_that_had_come_off_by_then_is_meant_unless_said() {
        Swap swap = new Swap(A, day(2), Stations.PAPER);
        Register last = register(putOn(A, 0), swap, off(A, 7), putOn(B, 10, A));
        assertEquals(Optional.of(new BagUse(A, day(2))), bagging(last, B, 0).before());

        Register stillOn = register(putOn(A, 0), swap, off(A, 7), putOn(B, 5, A));
        assertEquals(Optional.of(new BagUse(A, START)), bagging(stillOn, B, 0).before());

        Register said = register(putOn(A, 0), swap, off(A, 7), putOn(B, 10, new UsedBefore(A, Optional.of(day(2)))));
        assertEquals(Optional.of(new BagUse(A, START)), bagging(said, B, 0).before());
    }

    @Test
    void a_head_may_get_an_earlier_bag_of_its_own_back_but_not_the_one_that_is_on() {
        Swap away = new Swap(A, day(2), Stations.PAPER);
        Register back = register(putOn(A, 0), away, new Swap(A, day(4), Stations.PAPER, Optional.of(UsedBefore.on(A))));
        assertEquals(Optional.of(new BagUse(A, START)), bagging(back, A, 2).before());
        refused(
                "no bag had come off this head by then",
                putOn(A, 0),
                new Swap(A, day(2), Stations.PAPER, Optional.of(UsedBefore.on(A))));
    }

    @Test
    void a_bag_that_is_on_or_unknown_or_its_own_or_of_other_material_or_elsewhere_since_is_refused() {
        refused("no bag had come off this head by then", putOn(A, 0), putOn(B, 3, A));
        refused("no bag had come off this head by then", putOn(B, 3, A));
        refused("no bag had come off this head by then", putOn(B, 3, B));
        refused("no bag had come off this head by then", putOn(A, 0, B), off(A, 7), putOn(B, 8, A), off(B, 9));
        refused(
                "no bag came off this head at that time",
                putOn(A, 0),
                off(A, 7),
                putOn(B, 9, new UsedBefore(A, Optional.of(day(6)))));
        refused(
                "that bag was of paper",
                putOn(A, 0),
                off(A, 7),
                putOn(B, 9),
                new Swap(B, day(10), Stations.MESH, Optional.of(UsedBefore.on(A))));
        refused("that bag was used on head B since", putOn(A, 0), off(A, 7), putOn(B, 9, A), putOn(C, 12, A));
    }

    @Test
    void an_earlier_use_entered_late_collides_with_the_one_entered_before() {
        Register register = register(putOn(A, 0), off(A, 7), putOn(C, 12, A));
        List<Fault> faults = assertThrows(
                        RefusedInputException.class,
                        () -> rules.apply(register, List.of(putOn(B, 9, UsedBefore.on(A)))))
                .faults();
        assertEquals("change 1, bag_before", faults.get(0).place());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_order_of_entry_does_not_matter(long seed) {
        List<RegisterChange> changes = new ArrayList<>(
                List.of(putOn(A, 0), off(A, 7), putOn(B, 7, A), off(B, 14), putOn(C, 20, B), off(C, 27)));
        Register inOrder = rules.apply(Register.EMPTY, changes);
        Collections.shuffle(changes, new Random(seed));
        Register mixed = rules.apply(Register.EMPTY, changes);
        assertEquals(inOrder, mixed);
        assertEquals(2, BagUses.before(mixed, bagging(mixed, C, 0)).size());
    }

    private Register register(RegisterChange... changes) {
        return rules.apply(Register.EMPTY, List.of(changes));
    }

    private static Bagging bagging(Register register, TagCode tag, int place) {
        return register.find(tag).orElseThrow().baggings().get(place);
    }

    private void refused(String rule, RegisterChange... changes) {
        List<Fault> faults = assertThrows(RefusedInputException.class, () -> register(changes))
                .faults();
        assertEquals(rule, faults.get(0).rule());
    }

    private static RegisterChange off(TagCode tag, int day) {
        return new TakeOff(tag, day(day));
    }

    private static RegisterChange putOn(TagCode tag, int day) {
        return putOn(tag, day, Optional.empty());
    }

    private static RegisterChange putOn(TagCode tag, int day, TagCode before) {
        return putOn(tag, day, UsedBefore.on(before));
    }

    private static RegisterChange putOn(TagCode tag, int day, UsedBefore before) {
        return putOn(tag, day, Optional.of(before));
    }

    private static RegisterChange putOn(TagCode tag, int day, Optional<UsedBefore> before) {
        Instant at = day(day);
        return new PutOn(
                tag,
                at,
                Stations.spot(1 + tag.value().charAt(0) - 'A'),
                Stations.PAPER,
                new Line("Tessel"),
                new Line("Tessel"),
                new Pollination(at, "Ida", PollinationKind.SELF, 8, Optional.empty()),
                Optional.empty(),
                before);
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }
}
