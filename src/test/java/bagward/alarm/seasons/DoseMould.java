package bagward.alarm.seasons;

import bagward.climate.Climate;
import java.time.Instant;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Mould by dose. Each wet hour at T adds 1 / I of what an infection takes, and what has gathered fades in dry time:
 *
 * <pre>I = 84.37 − 7.238 T + 0.1856 T²  hours</pre>
 *
 * <p>(a parabola in public use for grey mould on grapes, as read by others; lowest at 19.5 °C). The head is infected when its
 * dose passes a threshold of its own. Ours, drawn for each season: an hour counts half at 95 ± 1.5 %RH, fading within 2 to 8
 * dry hours, thresholds log-normal about a middle that is itself log-normal about 1 with a deviation of 0.3. Deviation of heads
 * within a season 0.4: on flowers of geranium spores came on none after 4 h and on all after 12 h at 25 °C (Sirjusingh and
 * Sutton 1996, Plant Disease 80:160-165, abstract), which are 2.7 such deviations.
 */
final class DoseMould implements HiddenMould {
    private final Random random;
    private final double middle;
    private final double halfWet;
    private final double fadingHours;

    DoseMould(long seed) {
        random = new Random(new SplittableRandom(~seed).nextLong());
        middle = Math.exp(0.3 * random.nextGaussian());
        halfWet = 95 + 1.5 * random.nextGaussian();
        fadingHours = 2 + 6 * random.nextDouble();
    }

    @Override
    public double threshold() {
        return middle * Math.exp(0.4 * random.nextGaussian());
    }

    @Override
    public Optional<Instant> reaches(Climate truth, double threshold) {
        double stepHours = truth.grid().step().toSeconds() / 3600.0;
        WetTime wet = new WetTime(halfWet, fadingHours, stepHours);
        double dose = 0;
        for (int i = 0; i < truth.grid().size(); i++) {
            double percent = truth.humidity().valueOrNaN(i);
            double added = wet.share(percent)
                    * stepHours
                    / neededHours(truth.temperature().valueOrNaN(i));
            dose = dose * wet.kept(percent) + added;
            if (dose >= threshold) {
                return Optional.of(truth.grid().at(i + 1));
            }
        }
        return Optional.empty();
    }

    /** Wet hours that an infection takes at a temperature, °C. */
    static double neededHours(double celsius) {
        return 84.37 - 7.238 * celsius + 0.1856 * celsius * celsius;
    }
}
