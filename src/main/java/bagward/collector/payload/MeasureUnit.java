package bagward.collector.payload;

import bagward.units.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A unit in which a sensor may report; codes as in the SenML unit table (RFC 8428 section 12.1) where it has one.
 *
 * <p>The table has no unit for photon flux density; {@code umol/m2/s} and {@code F} are our own extension.
 */
public enum MeasureUnit {
    /** Degree Celsius. */
    CELSIUS("Cel", Quantity.TEMPERATURE, "C", "°C", "degC", "celsius"),
    /** Kelvin; Celsius = K − 273.15 (SI Brochure, 9th edition, section 2.3.1). */
    KELVIN("K", Quantity.TEMPERATURE, "kelvin"),
    /** Degree Fahrenheit; Celsius = (F − 32) / 1.8 (NIST SP 811, appendix B.9, from memory). */
    FAHRENHEIT("F", Quantity.TEMPERATURE, "°F", "degF", "fahrenheit"),
    /** Relative humidity in percent. */
    PERCENT_HUMIDITY("%RH", Quantity.HUMIDITY),
    /** Relative humidity as a ratio, 0 to 1. */
    RATIO("/", Quantity.HUMIDITY),
    /** Lux; needs to know the light source. */
    LUX("lx", Quantity.LIGHT, "lux"),
    /** Global radiation in watt per square metre; needs to know the light source. */
    WATT_PER_SQUARE_METRE("W/m2", Quantity.LIGHT, "W/m²"),
    /** Photon flux density, the canonical unit of light. */
    MICROMOLE("umol/m2/s", Quantity.LIGHT, "µmol/m2/s", "µmol/m²/s"),
    /** Energy left in a battery, percent. */
    PERCENT_BATTERY("%EL", Quantity.BATTERY, "%");

    private final String code;
    private final Quantity quantity;
    private final String otherNames;

    MeasureUnit(String code, Quantity quantity, String... otherNames) {
        this.code = code;
        this.quantity = quantity;
        this.otherNames = String.join(" ", otherNames);
    }

    /** The code used in the configuration and in SenML. */
    public String code() {
        return code;
    }

    /** The quantity that it measures. */
    public Quantity quantity() {
        return quantity;
    }

    /** The units of a quantity. */
    public static List<MeasureUnit> of(Quantity quantity) {
        return Arrays.stream(values()).filter(u -> u.quantity == quantity).toList();
    }

    /** The unit with exactly this code. */
    public static Optional<MeasureUnit> ofCode(String code) {
        return Arrays.stream(values()).filter(u -> u.code.equals(code)).findFirst();
    }

    /**
     * The unit of a quantity as payloads outside SenML call it: the code or a common name of it, upper or lower case;
     * for humidity a lone {@code %} is percent.
     */
    public static Optional<MeasureUnit> ofName(String name, Quantity quantity) {
        if (quantity == Quantity.HUMIDITY && "%".equals(name)) {
            return Optional.of(PERCENT_HUMIDITY);
        }
        String wanted = name.toLowerCase(Locale.ROOT);
        return of(quantity).stream()
                .filter(u -> u.code.toLowerCase(Locale.ROOT).equals(wanted)
                        || List.of(u.otherNames.toLowerCase(Locale.ROOT).split(" "))
                                .contains(wanted))
                .findFirst();
    }

    /**
     * A value in the canonical unit of the quantity; empty if the light source has no known factor for this unit.
     *
     * @param value in this unit
     * @param light how light was measured; matters for {@link #LUX} and {@link #WATT_PER_SQUARE_METRE} only
     */
    public OptionalDouble toCanonical(double value, LightConversion light) {
        return switch (this) {
            case CELSIUS, PERCENT_HUMIDITY, MICROMOLE, PERCENT_BATTERY -> OptionalDouble.of(value);
            case KELVIN -> OptionalDouble.of(value - 273.15);
            case FAHRENHEIT -> OptionalDouble.of((value - 32) / 1.8);
            case RATIO -> OptionalDouble.of(value * 100);
            case LUX -> scaled(value, light.perLux());
            case WATT_PER_SQUARE_METRE -> scaled(value, light.perWatt());
        };
    }

    private static OptionalDouble scaled(double value, OptionalDouble factor) {
        return factor.isPresent() ? OptionalDouble.of(value * factor.getAsDouble()) : factor;
    }
}
