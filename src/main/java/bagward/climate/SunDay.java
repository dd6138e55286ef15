package bagward.climate;

import java.time.Instant;
import java.util.Optional;

/** What the sun does at a place on one civil day. */
public sealed interface SunDay {
    /** When the sun stands highest. */
    Instant transit();

    /** From sunrise to sunset; empty if the sun does not both rise and set. */
    Optional<Span> daylight();

    /**
     * The sun rises and sets.
     *
     * @param sunrise upper limb on the horizon, with refraction (centre at −0.833°)
     * @param transit highest point
     * @param sunset upper limb on the horizon again
     */
    record Regular(Instant sunrise, Instant transit, Instant sunset) implements SunDay {
        @Override
        public Optional<Span> daylight() {
            return Optional.of(new Span(sunrise, sunset));
        }
    }

    /**
     * Polar day: the sun stays up.
     *
     * @param transit highest point
     */
    record UpAllDay(Instant transit) implements SunDay {
        @Override
        public Optional<Span> daylight() {
            return Optional.empty();
        }
    }

    /**
     * Polar night: the sun stays down.
     *
     * @param transit highest point, below the horizon
     */
    record DownAllDay(Instant transit) implements SunDay {
        @Override
        public Optional<Span> daylight() {
            return Optional.empty();
        }
    }
}
