package bagward.collector.payload;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What lights the sensor. Photon flux from lux: lux divided by a constant of the source, Thimijan and Heins 1983,
 * HortScience 18(6):818-822 (constants read in a quotation of its tables). In a glasshouse good to about ±10 %. LED
 * lamps have no common constant: state their factor.
 */
public enum LightSource {
    /** Sun and sky: 54 lx per µmol m⁻² s⁻¹; 0.45 × 4.57 µmol per joule of global radiation (McCree 1972), ±5 %. */
    DAYLIGHT(54, OptionalDouble.of(0.45 * 4.57)),
    /** High-pressure sodium lamps: 82 lx per µmol m⁻² s⁻¹. */
    HIGH_PRESSURE_SODIUM(82, OptionalDouble.empty()),
    /** Metal halide lamps: 71 lx per µmol m⁻² s⁻¹. */
    METAL_HALIDE(71, OptionalDouble.empty()),
    /** Cool-white fluorescent lamps: 74 lx per µmol m⁻² s⁻¹. */
    FLUORESCENT(74, OptionalDouble.empty()),
    /** Incandescent lamps: 50 lx per µmol m⁻² s⁻¹. */
    INCANDESCENT(50, OptionalDouble.empty());

    private final double luxPerMicromole;
    private final OptionalDouble perWatt;

    LightSource(double luxPerMicromole, OptionalDouble perWatt) {
        this.luxPerMicromole = luxPerMicromole;
        this.perWatt = perWatt;
    }

    /** The word used in the configuration, as {@code high-pressure-sodium}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The source with this word. */
    public static Optional<LightSource> ofWord(String word) {
        return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
    }

    /** How light of this source converts. */
    public LightConversion conversion() {
        return new LightConversion(OptionalDouble.of(1 / luxPerMicromole), perWatt);
    }
}
