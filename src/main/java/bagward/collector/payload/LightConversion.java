package bagward.collector.payload;

import bagward.climate.Light;
import bagward.climate.LightSource;
import java.util.OptionalDouble;

/**
 * Photon flux density from other measures of light.
 *
 * @param perLux µmol m⁻² s⁻¹ per lux; empty if not known
 * @param perWatt µmol per joule of global radiation, that is µmol m⁻² s⁻¹ per W m⁻²; empty if not known
 */
public record LightConversion(OptionalDouble perLux, OptionalDouble perWatt) {
    /** Nothing is known about the light: only photon flux density can be used. */
    public static final LightConversion UNKNOWN = new LightConversion(OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Light of a source: lux by its published factor; global radiation only of daylight, for lamps have no common share of
     * photosynthetic light.
     */
    public static LightConversion of(LightSource source) {
        OptionalDouble perWatt = source == LightSource.DAYLIGHT
                ? OptionalDouble.of(Light.MICROMOLES_PER_GLOBAL_WATT)
                : OptionalDouble.empty();
        return new LightConversion(OptionalDouble.of(1 / source.factor().luxPerMicromole()), perWatt);
    }

    /** A stated factor of µmol m⁻² s⁻¹ per unit of the payload, whichever it is. */
    public static LightConversion ofFactor(double factor) {
        return new LightConversion(OptionalDouble.of(factor), OptionalDouble.of(factor));
    }
}
