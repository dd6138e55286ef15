package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.bag.RegisterChange.PutOn;
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

class CropOfLineTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final CropId NAPUS = new CropId("napus");
    private static final CropId RAPA = new CropId("rapa");

    private final RegisterRules rules =
            new RegisterRules(Stations.station(), Set.of(Stations.PAPER), Set.of(NAPUS, RAPA));

    @Test
    void a_head_has_the_crop_that_was_named_with_it_or_last_before_it_for_its_seed_parent() {
        Register register = rules.apply(
                Register.EMPTY,
                List.of(
                        head("A", 1, "Tessel", Optional.empty()),
                        head("B", 2, "Tessel", Optional.of(NAPUS)),
                        head("C", 3, "Tessel", Optional.empty()),
                        head("D", 4, "Rook", Optional.empty()),
                        head("E", 5, "Tessel", Optional.of(RAPA)),
                        head("F", 6, "Tessel", Optional.empty())));

        assertEquals(
                List.of("", "napus", "napus", "", "rapa", "rapa"),
                register.heads().stream()
                        .map(head -> head.crop().map(CropId::value).orElse(""))
                        .toList());
    }

    @Test
    void it_does_not_matter_in_which_order_the_heads_were_entered() {
        List<RegisterChange> changes = new ArrayList<>();
        Random random = new Random(11);
        for (int day = 1; day <= 6; day++) {
            Optional<CropId> crop = random.nextBoolean() ? Optional.of(NAPUS) : Optional.empty();
            changes.add(head("H" + day, day, day % 2 == 0 ? "Tessel" : "Rook", crop));
        }
        List<Head> inTime = List.copyOf(rules.apply(Register.EMPTY, changes).heads());
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(changes, random);
            Register one = Register.EMPTY;
            for (RegisterChange change : changes) {
                one = rules.apply(one, List.of(change));
            }
            assertEquals(inTime, List.copyOf(one.heads()));
        }
    }

    @Test
    void a_crop_that_is_not_known_is_refused_with_those_that_are() {
        RefusedInputException refused = assertThrows(
                RefusedInputException.class,
                () -> rules.apply(Register.EMPTY, List.of(head("A", 1, "Tessel", Optional.of(new CropId("mustard"))))));

        assertEquals("change 1, crop", refused.faults().get(0).place());
        assertEquals("known are: napus, rapa", refused.faults().get(0).rule());
    }

    private static PutOn head(String tag, int day, String seed, Optional<CropId> crop) {
        Instant at = START.plus(Duration.ofDays(day));
        return new PutOn(
                new TagCode(tag),
                at,
                Stations.spot(day),
                Stations.PAPER,
                new Line(seed),
                new Line("Ash"),
                new Pollination(at, "Ida", PollinationKind.CROSS, 8, Optional.empty()),
                crop);
    }
}
