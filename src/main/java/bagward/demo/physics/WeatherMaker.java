package bagward.demo.physics;

import bagward.climate.ClearSky;
import bagward.climate.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;

/**
 * Weather by chance, the same for the same seed: a kind of sky for each day, clouds that come and go by the minute, and
 * temperature, dew point and wind that follow the sky with delay. Ask it once a minute, in order.
 */
public final class WeatherMaker {
    private static final List<Sky> KINDS = List.of(Sky.CLEAR, Sky.BROKEN, Sky.OVERCAST);
    private static final double STEP_SECONDS = 60;
    private static final double SEASON_MEAN_CELSIUS = 9;
    private static final double FOLLOW_SECONDS = 5 * 3600.0;

    private final Random random;
    private final Site site;
    private final double meanWind;
    private LocalDate day = LocalDate.MIN;
    private Sky sky = Sky.BROKEN;
    private double dayMean = SEASON_MEAN_CELSIUS;
    private double mean = SEASON_MEAN_CELSIUS;
    private double halfSwing = Sky.BROKEN.halfSwing();
    private double gap = Sky.BROKEN.dewPointGap();
    private double cover = Sky.BROKEN.cover();
    private double thinness = 1;
    private boolean shaded;
    private double clearness = 0.7;
    private double gust;

    /**
     * A maker of weather for a place.
     *
     * @param seed the same seed gives the same weather
     * @param site where the sun is seen from
     */
    public WeatherMaker(long seed, Site site) {
        this.random = new Random(seed);
        this.site = site;
        this.meanWind = 2.5;
    }

    /** The weather one minute on; the moment is the end of that minute. */
    public Weather next(Instant at) {
        double solarHour = solarHour(at);
        turnDay(at);
        followSky();
        moveClouds();
        double celsius = mean + halfSwing * Math.cos(2 * Math.PI * (solarHour - 14.5) / 24);
        double dewPoint = Math.min(mean - gap, celsius - 0.3);
        double light = ClearSky.global(site, at).wattsPerSquareMetre() * clearness;
        gust += (0 - gust) * STEP_SECONDS / 900 + 0.15 * random.nextGaussian();
        double wind = Math.max(0.3, meanWind + gust + 1.2 * Math.sin(Math.PI * (solarHour - 8) / 12));
        double pascals = Vapour.saturationPascals(dewPoint);
        return new Weather(celsius, Vapour.density(pascals, celsius), light, celsius - 20 + 17 * cover, wind);
    }

    private void turnDay(Instant at) {
        LocalDate today = at.plusSeconds(Math.round(site.longitude() * 240))
                .atOffset(ZoneOffset.UTC)
                .toLocalDate();
        if (today.equals(day)) {
            return;
        }
        day = today;
        dayMean += 0.4 * (SEASON_MEAN_CELSIUS - dayMean) + 1.5 * random.nextGaussian();
        thinness = 0.7 + 0.8 * random.nextDouble();
        if (random.nextDouble() > 0.35) {
            sky = KINDS.get(random.nextInt(KINDS.size()));
        }
    }

    private void followSky() {
        double share = STEP_SECONDS / FOLLOW_SECONDS;
        mean += (dayMean - mean) * share;
        halfSwing += (sky.halfSwing() - halfSwing) * share;
        gap += (sky.dewPointGap() - gap) * share;
        cover += (sky.cover() - cover) * share;
    }

    private void moveClouds() {
        double chance = shaded ? sky.cloudLeaves() : sky.cloudArrives();
        if (random.nextDouble() < chance) {
            shaded = !shaded;
        }
        double target = shaded ? sky.lightUnderCloud() * thinness : 1;
        clearness += (target - clearness) * 0.4 + 0.02 * random.nextGaussian();
        clearness = Math.min(1.1, Math.max(0.08, clearness));
    }

    private double solarHour(Instant at) {
        double utcHours = at.getEpochSecond() % 86_400 / 3600.0;
        return utcHours + site.longitude() / 15;
    }
}
