package bagward.alarm.seasons;

import java.time.Instant;
import java.util.Optional;

/** Something that calls a person to a bag. Only the first call for a bag counts. */
interface Caller {
    /** When it first calls for a bag; empty if it never does. */
    Optional<Instant> firstCall(MouldSeason season, SeasonBag bag);

    /** What it is, for the table. */
    String name();
}
