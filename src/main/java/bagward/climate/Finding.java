package bagward.climate;

/**
 * Something odd about a sensor. It asks for a look; the readings stay as they are.
 *
 * @param series which quantity of which sensor
 * @param when from the first to the last reading concerned
 * @param oddity what kind
 * @param amount the number behind it, in the unit of the quantity: size of the jump, range, or value
 */
public record Finding(SeriesId series, Span when, Oddity oddity, double amount) {
    /** What can be odd. */
    public enum Oddity {
        /** A value that can be, but hardly in a house. */
        SUSPECT_VALUE,
        /** A jump from one reading to the next. */
        STEP,
        /** A change over hours that is larger than weather outdoors makes; the sun on glass can. */
        FAST_CHANGE,
        /** Hardly any change for hours. */
        NO_CHANGE,
        /** At 100 %RH while the air warmed: water on the sensor, or in it. */
        STUCK_WET
    }
}
