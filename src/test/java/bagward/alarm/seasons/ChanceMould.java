package bagward.alarm.seasons;

import bagward.climate.Climate;
import java.time.Instant;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Mould by chance, limited by inoculum. The chance of infection after W effective wet hours at their mean temperature T is
 *
 * <pre>F = (3.56 q^0.99 (1 − q))^0.71 / (1 + exp(1.85 − 0.19 W)),  q = T / 35</pre>
 *
 * <p>less its value without wetness (Botrytis on grape flowers: Gonzalez-Dominguez and others 2015, PLoS ONE 10:e0140444,
 * equation as read by others, limits of 0 and 35 °C from memory). All rises of F over the whole time in the bag add up; the
 * head is infected when their sum passes a threshold of its own, exponential with mean 1 / m. Ours, drawn for each season:
 * m log-normal about 0.15 with a deviation of 0.8 (how much inoculum there is), an hour counts half at 95 ± 1.5 %RH, fading
 * within 2 to 8 dry hours.
 */
final class ChanceMould implements HiddenMould {
    private static final double WARMEST = 35;

    private final Random random;
    private final double inoculum;
    private final double halfWet;
    private final double fadingHours;

    ChanceMould(long seed) {
        random = new Random(new SplittableRandom(~seed).nextLong());
        inoculum = Math.min(0.9, 0.15 * Math.exp(0.8 * random.nextGaussian()));
        halfWet = 95 + 1.5 * random.nextGaussian();
        fadingHours = 2 + 6 * random.nextDouble();
    }

    @Override
    public double threshold() {
        return -Math.log(1 - random.nextDouble()) / inoculum;
    }

    @Override
    public Optional<Instant> reaches(Climate truth, double threshold) {
        WetTime wet = new WetTime(halfWet, fadingHours, truth.grid().step().toSeconds() / 3600.0);
        double before = 0;
        double dose = 0;
        for (int i = 0; i < truth.grid().size(); i++) {
            wet.step(truth.temperature().valueOrNaN(i), truth.humidity().valueOrNaN(i));
            double chance = published(wet.hours(), wet.meanCelsius()) - published(0, wet.meanCelsius());
            dose += Math.max(0, chance - before);
            before = chance;
            if (dose >= threshold) {
                return Optional.of(truth.grid().at(i + 1));
            }
        }
        return Optional.empty();
    }

    /** The published equation: chance after wet hours at a temperature, °C. */
    static double published(double wetHours, double celsius) {
        double q = celsius / WARMEST;
        if (q <= 0 || q >= 1) {
            return 0;
        }
        double warmth = Math.pow(3.56 * Math.pow(q, 0.99) * (1 - q), 0.71);
        return warmth / (1 + Math.exp(1.85 - 0.19 * wetHours));
    }
}
