package bagward.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DryingRoomTest {
    private static final double MINUTE = 60;
    private static final Weather SPRING = new Weather(8, 0.0066, 0, 0, 3);

    private static double percentAfter(DryingRoom room, int hours) {
        HouseAir air = room.step(SPRING, MINUTE);
        for (int minute = 1; minute < hours * 60; minute++) {
            air = room.step(SPRING, MINUTE);
        }
        return air.percent();
    }

    @Test
    void an_empty_room_comes_to_the_vapour_outside_at_its_own_warmth() {
        assertEquals(100 * 0.0066 / Vapour.saturationDensity(19), percentAfter(new DryingRoom(), 72), 0.5);
    }

    @Test
    void the_dryer_holds_a_room_with_fresh_heads_dry() {
        DryingRoom room = new DryingRoom();
        room.hang(20, 20);
        double percent = percentAfter(room, 24);
        assertTrue(percent > 35 && percent < 52, "percent " + percent);
    }

    @Test
    void without_it_the_room_grows_damp_within_hours() {
        DryingRoom room = new DryingRoom();
        room.hang(20, 20);
        percentAfter(room, 24);
        room.trip();
        double percent = percentAfter(room, 8);
        assertTrue(percent > 68 && percent < 85, "percent " + percent);
    }

    @Test
    void heads_dry_out_and_give_off_less() {
        DryingRoom fresh = new DryingRoom();
        fresh.hang(6, 5);
        DryingRoom old = new DryingRoom();
        old.hang(6, 5);
        percentAfter(old, 24 * 14);
        old.trip();
        fresh.trip();
        assertTrue(percentAfter(old, 12) < percentAfter(fresh, 12) - 3);
    }
}
