package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.TakeOff;
import bagward.bag.RegisterChange.WithdrawFlowers;
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

class FlowerNotesTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final TagCode H1 = new TagCode("H1");

    private final RegisterRules rules = new RegisterRules(Stations.station(), Set.of(Stations.PAPER));

    @Test
    void nothing_is_seen_of_flowers_until_somebody_notes_it() {
        assertEquals(FlowerSigns.NOT_NOTED, signs(putOn()));
    }

    @Test
    void the_last_flower_is_the_newest_one_and_petals_dropped_when_it_was_first_seen() {
        FlowerSigns signs = signs(putOn(), opened(2), opened(3), dropped(5), dropped(6));
        assertEquals(Optional.of(day(3)), signs.lastFlowerOpened());
        assertEquals(Optional.of(day(5)), signs.petalsDropped());
    }

    @Test
    void a_withdrawn_note_leaves_the_one_before_it() {
        FlowerSigns signs =
                signs(putOn(), opened(2), opened(3), new WithdrawFlowers(H1, day(3), FlowerSign.LAST_OPENED));
        assertEquals(Optional.of(day(2)), signs.lastFlowerOpened());
    }

    @Test
    void a_note_is_taken_of_a_bare_head_but_not_after_its_harvest_nor_twice_for_one_time() {
        assertEquals(
                Optional.of(day(8)),
                signs(putOn(), new TakeOff(H1, day(7)), dropped(8)).petalsDropped());
        refused("the head was harvested or lost by then", putOn(), new Harvest(H1, day(7), ""), dropped(8));
        refused("this was noted for that very time already", putOn(), dropped(3), dropped(3));
    }

    @Test
    void what_was_never_noted_cannot_be_withdrawn() {
        refused(
                "nothing of the kind was noted for that time",
                putOn(),
                opened(3),
                new WithdrawFlowers(H1, day(3), FlowerSign.PETALS_DROPPED));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_order_in_which_notes_and_withdrawals_are_entered_does_not_matter(long seed) {
        List<RegisterChange> changes = new ArrayList<>(List.of(
                putOn(),
                opened(2),
                opened(3),
                dropped(5),
                new WithdrawFlowers(H1, day(3), FlowerSign.LAST_OPENED),
                new TakeOff(H1, day(6))));
        FlowerSigns inOrder = signs(changes.toArray(RegisterChange[]::new));
        Collections.shuffle(changes, new Random(seed));
        assertEquals(inOrder, signs(changes.toArray(RegisterChange[]::new)));
    }

    private void refused(String rule, RegisterChange... changes) {
        RefusedInputException refusal = assertThrows(RefusedInputException.class, () -> signs(changes));
        assertTrue(refusal.faults().get(0).rule().contains(rule), refusal::toString);
    }

    private FlowerSigns signs(RegisterChange... changes) {
        return rules.apply(Register.EMPTY, List.of(changes))
                .find(H1)
                .orElseThrow()
                .flowers();
    }

    private static NoteFlowers opened(int day) {
        return new NoteFlowers(H1, day(day), FlowerSign.LAST_OPENED);
    }

    private static NoteFlowers dropped(int day) {
        return new NoteFlowers(H1, day(day), FlowerSign.PETALS_DROPPED);
    }

    private static PutOn putOn() {
        return new PutOn(
                H1,
                START,
                Stations.spot(1),
                Stations.PAPER,
                new Line("Aspen"),
                new Line("Birch"),
                new Pollination(START, "Ida", PollinationKind.CROSS, 8, Optional.empty()),
                Optional.empty());
    }

    private static Instant day(int days) {
        return START.plus(Duration.ofDays(days));
    }
}
