package bagward.pollen;

import bagward.climate.LightSum;
import bagward.climate.Span;
import bagward.climate.Transmission;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;

/**
 * The light of a day up to a moment, and how it may go on: with a sky that is clear from then on, or with one that stays
 * as it was so far. As long as the sun has stood 5° high for less than an hour, "as so far" is not known, and an
 * overcast sky stands in for it.
 */
final class SkyCourse {
    /** Light under an overcast sky over that of a cloudless one: FAO-56 equation 35 at no sunshine over equation 36. */
    static final double OVERCAST = 1.0 / 3;

    private static final Duration YOUNG = Duration.ofHours(1);
    private static final double DARKEST = 0.05;
    private static final double BRIGHTEST = 1.1;

    private final HouseDay day;
    private final Transmission transmission;
    private final Instant now;
    private final LightSum soFar;

    SkyCourse(HouseDay day, Transmission transmission, Instant now) {
        this.day = day;
        this.transmission = transmission;
        this.now = now;
        this.soFar = day.lightUntil(now);
    }

    /** Light so far. */
    LightSum soFar() {
        return soFar;
    }

    /** Index of the sky so far, 0.05 to 1.1; empty while the morning is young or too little of it is known. */
    OptionalDouble indexSoFar() {
        Span past = new Span(day.daylight().from(), later(day.daylight().from(), now));
        OptionalDouble ratio = day.ratio(past);
        if (ratio.isEmpty() || day.highSun(past).compareTo(YOUNG) < 0) {
            return OptionalDouble.empty();
        }
        double index = ratio.getAsDouble() / transmission.share();
        return OptionalDouble.of(Math.max(DARKEST, Math.min(BRIGHTEST, index)));
    }

    /** Light from sunrise to a time if the sky has an index from now on, mol m⁻²; measured for times that are over. */
    double moles(Instant at, double index) {
        if (!at.isAfter(now)) {
            return day.lightUntil(at).moles();
        }
        Instant from = later(now, day.daylight().from());
        double rest = at.isAfter(from) ? day.clearMoles(new Span(from, at)) : 0;
        return soFar.moles() + rest * transmission.share() * index;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
