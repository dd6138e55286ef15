package bagward.alarm.seasons;

import bagward.climate.Climate;
import java.time.Instant;
import java.util.Optional;

/**
 * Which heads of a simulated season mould, and when: a stated outcome that rules are held against. Of another form than the
 * mould table, with thresholds drawn anew for each season and head. Good for one season, one head after the other.
 */
interface HiddenMould {
    /** When the next head is infected in the true climate of its bag; empty if it is not. */
    default Optional<Instant> infection(Climate truth) {
        return reaches(truth, threshold());
    }

    /** The threshold of the next head, drawn. */
    double threshold();

    /** When the dose of a climate reaches a threshold; empty if it does not. */
    Optional<Instant> reaches(Climate truth, double threshold);
}
