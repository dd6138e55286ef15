package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PollinationNotesTest {
    private static Pollination pollination(PollinationKind kind, double hoursAfterStart) {
        return new Pollination(
                Bags.START.plus(Duration.ofMinutes(Math.round(hoursAfterStart * 60))),
                "Ida",
                kind,
                8,
                Optional.empty());
    }

    private static List<PollinationNote> notes(Bags bags, PollinationKind kind) {
        return PollinationNotes.of(bags.build(), pollination(kind, 0));
    }

    @Test
    void water_in_the_first_night_is_noted_and_later_water_is_not() {
        List<PollinationNote> notes =
                notes(Bags.everyMinute().air(20, 18, 60).filmWet(6, 12, 85), PollinationKind.SELF);
        assertEquals(1, notes.size());
        assertEquals(PollinationNote.Kind.SEED_SET, notes.get(0).kind());
        assertEquals(4, notes.get(0).hours(), 1e-9);
        assertEquals(List.of(), notes(Bags.everyMinute().air(24, 18, 60).filmWet(6, 12, 85), PollinationKind.SELF));
    }

    @Test
    void humid_days_are_noted_for_a_cross_only() {
        Bags humid = Bags.everyMinute().air(30, 18, 92);
        assertEquals(
                List.of(PollinationNote.Kind.PURITY),
                notes(humid, PollinationKind.CROSS).stream()
                        .map(PollinationNote::kind)
                        .toList());
        assertEquals(List.of(), notes(humid, PollinationKind.SELF));
        assertEquals(List.of(), notes(Bags.everyMinute().air(23, 18, 92), PollinationKind.CROSS));
    }

    @Test
    void hours_without_data_go_with_the_note() {
        List<PollinationNote> notes =
                notes(Bags.everyMinute().filmWet(2, 12, 85).gap(3).air(40, 18, 60), PollinationKind.SIB);
        assertEquals(3, notes.get(0).unknownHours(), 1e-9);
    }
}
