package bagward.climate;

import bagward.units.Checks;
import java.time.Instant;
import java.util.Set;

/**
 * Relative humidity as sensors send it. Good sensors read a little over 100 %RH in saturated air: up to 104 is taken as
 * 100 and marked (rule of the Austrian weather service, CBS/OPAG-IOS ET AWS-1 Doc. 9(2), 2002); above that the sensor or
 * the unit is wrong.
 */
public final class RawHumidity {
    /** Highest value that is taken as saturated air, %RH. */
    public static final double HIGHEST = 104;

    private static final double SATURATED = 100;

    private RawHumidity() {}

    /**
     * A humidity reading from a raw value.
     *
     * @param series the humidity series of the sensor
     * @param percent %RH as sent, 0 to 104
     * @throws bagward.fault.ImpossibleValueException if it is not finite or outside 0 to 104
     */
    public static Reading reading(SeriesId series, Instant measuredAt, double percent) {
        Checks.within(series.toString(), percent, 0, HIGHEST, series.quantity().unitSymbol());
        return percent > SATURATED
                ? new Reading(series, measuredAt, SATURATED, Set.of(ReadingFlag.HUMIDITY_CAPPED))
                : Reading.of(series, measuredAt, percent);
    }
}
