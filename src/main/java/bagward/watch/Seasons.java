package bagward.watch;

import bagward.station.HouseId;
import java.time.Instant;
import java.time.LocalDate;

/** What houses were like over months and years, day by day. Safe for use by several threads. */
public interface Seasons {
    /** The days [from, to) of a house. */
    HouseDays of(HouseId house, LocalDate from, LocalDate to);

    /** Single readings before this may be gone; their summaries stay. {@link Instant#MIN} if none were ever deleted. */
    Instant keptSince();
}
