package bagward.climate;

import bagward.units.Celsius;
import bagward.units.Checks;
import bagward.units.RelativeHumidity;

/**
 * Salts whose saturated solution keeps the air above it at a known humidity: Greenspan 1977, J. Res. NBS 81A:89-96,
 * as a polynomial of the temperature,
 *
 * <pre>RH = a0 + a1 t + a2 t² + a3 t³    %RH, t in °C</pre>
 *
 * <p>The coefficients were read in codes that cite the paper. For lithium chloride two of them have a negative a1, which
 * gives 10.89 %RH at 25 °C; the accepted value is 11.30, and it needs the positive one used here.
 */
public enum SaturatedSalt {
    /** LiCl, 11.3 %RH at 25 °C. */
    LITHIUM_CHLORIDE("lithium chloride", 11.2323, 0.00824245, -0.214890e-3, 0),
    /** MgCl2, 32.8 %RH at 25 °C. */
    MAGNESIUM_CHLORIDE("magnesium chloride", 33.6686, -0.00797397, -1.08988e-3, 0),
    /** K2CO3, 43.1 %RH at 25 °C. */
    POTASSIUM_CARBONATE("potassium carbonate", 43.1315, -0.00147523, 0, 0),
    /** NaCl, 75.3 %RH at 25 °C. */
    SODIUM_CHLORIDE("sodium chloride", 75.5164, 0.0398321, -2.65459e-3, 2.848e-5),
    /** KCl, 84.3 %RH at 25 °C. */
    POTASSIUM_CHLORIDE("potassium chloride", 88.6190, -0.193340, 0.899706e-3, 0),
    /** KNO3, 93.6 %RH at 25 °C; a good upper point, since what matters here is near saturation. */
    POTASSIUM_NITRATE("potassium nitrate", 96.3361, 0.0112371, -4.84514e-3, 0),
    /** K2SO4, 97.3 %RH at 25 °C; the uppermost point. */
    POTASSIUM_SULPHATE("potassium sulphate", 98.7792, -0.0590502, 0, 0);

    private static final double COLDEST = 10;
    private static final double WARMEST = 35;

    private final String word;
    private final double constant;
    private final double linear;
    private final double square;
    private final double cube;

    SaturatedSalt(String word, double constant, double linear, double square, double cube) {
        this.word = word;
        this.constant = constant;
        this.linear = linear;
        this.square = square;
        this.cube = cube;
    }

    /** The word for it on pages. */
    public String word() {
        return word;
    }

    /**
     * Humidity above the saturated solution.
     *
     * @param solution temperature of salt, air and sensor, 10 to 35 °C, where a check on a bench can be made
     * @throws bagward.fault.ImpossibleValueException outside that range
     */
    public RelativeHumidity humidity(Celsius solution) {
        double t = Checks.within("temperature of a salt check", solution.degrees(), COLDEST, WARMEST, "°C");
        return new RelativeHumidity(constant + t * (linear + t * (square + t * cube)));
    }
}
