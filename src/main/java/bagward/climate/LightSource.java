package bagward.climate;

/**
 * Where light comes from, with the factors of Thimijan and Heins 1983 (HortScience 18:818-822; the six rows were read
 * in texts that quote the paper's tables, not in the paper).
 *
 * <p>The arithmetic is exact, the physics is not: under glass a conversion from lux is good to about 10 % at best,
 * because cover and lamps change the spectrum. LED lamps differ from each other and are not listed; give such a sensor
 * a {@link LightFactor} of its own.
 */
public enum LightSource {
    /** Sun and sky together. */
    DAYLIGHT("daylight", 54, 4.57),
    /** Blue sky without the sun. */
    BLUE_SKY("blue-sky", 52, 4.24),
    /** High-pressure sodium lamps. */
    HIGH_PRESSURE_SODIUM("high-pressure-sodium", 82, 4.98),
    /** Metal halide lamps. */
    METAL_HALIDE("metal-halide", 71, 4.59),
    /** Cool-white fluorescent lamps. */
    COOL_WHITE_FLUORESCENT("cool-white-fluorescent", 74, 4.59),
    /** Incandescent lamps. */
    INCANDESCENT("incandescent", 50, 5.00);

    private static final String SOURCE = "Thimijan and Heins 1983, HortScience 18:818-822";

    private final String word;
    private final double luxPerMicromole;
    private final double micromolesPerJoule;

    LightSource(String word, double luxPerMicromole, double micromolesPerJoule) {
        this.word = word;
        this.luxPerMicromole = luxPerMicromole;
        this.micromolesPerJoule = micromolesPerJoule;
    }

    /** The word for it in configuration and on pages. */
    public String word() {
        return word;
    }

    /** The published factor between lux and photon flux. */
    public LightFactor factor() {
        return new LightFactor(luxPerMicromole, word + ", " + SOURCE);
    }

    /** Photons of 400 to 700 nm in each joule of that waveband, µmol J⁻¹. */
    public double micromolesPerJoule() {
        return micromolesPerJoule;
    }
}
