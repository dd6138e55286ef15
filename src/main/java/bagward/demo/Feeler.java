package bagward.demo;

import java.util.Random;

/** The element of one sensor: it follows its place with delay, is a little off, and flickers. */
final class Feeler {
    private static final double CELSIUS_NOISE = 0.05;
    private static final double PERCENT_NOISE = 0.4;
    private static final double LIGHT_NOISE = 0.005;
    private static final double HIGHEST_PERCENT = 103;

    private final SensorNature nature;
    private final Random random;
    private double celsius = Double.NaN;
    private double percent = Double.NaN;

    Feeler(SensorNature nature, long seed) {
        this.nature = nature;
        this.random = new Random(seed);
    }

    /** Lets the element stand in this air for a time. */
    void follow(AirSample air, double seconds) {
        double share = 1 - Math.exp(-seconds / nature.lagSeconds());
        celsius = Double.isNaN(celsius) ? air.celsius() : celsius + (air.celsius() - celsius) * share;
        percent = Double.isNaN(percent) ? air.percent() : percent + (air.percent() - percent) * share;
    }

    /** What it shows now; light is felt without delay. */
    AirSample show(AirSample air) {
        double light = air.globalLight() * (1 + LIGHT_NOISE * nature.noise() * random.nextGaussian());
        double shownPercent = percent + nature.percentOffset() + PERCENT_NOISE * nature.noise() * random.nextGaussian();
        return new AirSample(
                celsius + nature.celsiusOffset() + CELSIUS_NOISE * nature.noise() * random.nextGaussian(),
                Math.min(HIGHEST_PERCENT, Math.max(0, shownPercent)),
                Math.max(0, light));
    }

    /** Whether the next message gets lost on its way. */
    boolean losesNext() {
        return random.nextDouble() < nature.lostShare();
    }
}
