package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class HarvestDaysTest {
    private static final Crop.RipeningWindow WINDOW = new Crop.RipeningWindow(49, 56, "test row");

    @Test
    void days_are_counted_from_the_day_of_the_pollination() {
        HarvestDays days = HarvestDays.of(Instant.parse("2031-04-11T09:00:00Z"), WINDOW, ZoneId.of("Europe/Rome"));
        assertEquals(LocalDate.of(2031, 5, 30), days.first());
        assertEquals(LocalDate.of(2031, 6, 6), days.last());
    }

    @Test
    void the_day_is_that_of_the_house_and_not_that_of_greenwich() {
        Instant lateEvening = Instant.parse("2031-04-11T23:30:00Z");
        assertEquals(
                LocalDate.of(2031, 5, 31),
                HarvestDays.of(lateEvening, WINDOW, ZoneId.of("Asia/Tokyo")).first());
        assertEquals(
                LocalDate.of(2031, 5, 30),
                HarvestDays.of(lateEvening, WINDOW, ZoneId.of("America/Lima")).first());
    }

    @Test
    void a_change_of_clocks_moves_no_day() {
        // Clocks of Rome go forward on 30 March 2031: 49 days are an hour shorter.
        Instant justAfterMidnight = Instant.parse("2031-03-09T23:30:00Z");
        assertEquals(
                LocalDate.of(2031, 4, 28),
                HarvestDays.of(justAfterMidnight, WINDOW, ZoneId.of("Europe/Rome"))
                        .first());
    }
}
