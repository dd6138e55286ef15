package bagward.pollen;

import bagward.bag.PollenScore;
import bagward.climate.ClearSky;
import bagward.climate.Climate;
import bagward.climate.Light;
import bagward.climate.RegularSeries;
import bagward.climate.Site;
import bagward.climate.TimeGrid;
import bagward.mould.HeatLimits;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** A house under a sky of known brightness each day, with scores that follow a known relation to its light. */
final class SimulatedHouse {
    static final HeatLimits HEAT = new HeatLimits(27, 30, Duration.ofHours(3), 33, "invented");
    static final HouseId HOUSE = new HouseId("alder");
    static final Site SITE = new Site(54, 10, 20);
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    static final double TRANSMISSION = 0.6;

    private SimulatedHouse() {}

    /** A day at 18 °C and 70 %RH under a sky of one brightness, 1 for a clear one. */
    static HouseDay day(LocalDate day, double brightness) {
        return day(day, brightness, 18);
    }

    static HouseDay day(LocalDate day, double brightness, double celsius) {
        double[] light = light(day);
        for (int i = 0; i < light.length; i++) {
            light[i] *= brightness;
        }
        return day(day, light, celsius);
    }

    static HouseDay day(LocalDate day, double[] light, double celsius) {
        TimeGrid grid = HouseDay.grid(day, ZONE);
        Climate climate = new Climate(constant(grid, celsius), constant(grid, 70), RegularSeries.of(grid, light));
        return new HouseDay(SITE, day, ZONE, climate, new BitSet());
    }

    /** Light of a clear day in the house, cell by cell, µmol m⁻² s⁻¹. */
    static double[] light(LocalDate day) {
        TimeGrid grid = HouseDay.grid(day, ZONE);
        double[] light = new double[grid.size()];
        for (int i = 0; i < light.length; i++) {
            Instant middle = grid.at(i).plus(HouseDay.STEP.dividedBy(2));
            light[i] = TRANSMISSION
                    * ClearSky.global(SITE, middle).wattsPerSquareMetre()
                    * Light.MICROMOLES_PER_GLOBAL_WATT;
        }
        return light;
    }

    private static RegularSeries constant(TimeGrid grid, double value) {
        double[] values = new double[grid.size()];
        Arrays.fill(values, value);
        return RegularSeries.of(grid, values);
    }

    static Instant at(LocalDate day, int hour) {
        return day.atTime(LocalTime.of(hour, 0)).atZone(ZONE).toInstant();
    }

    /** A season of days whose sky lingers: clear, mixed and overcast. */
    static HouseSeason season(int days, long seed) {
        Random random = new Random(seed);
        double mood = 0;
        List<HouseDay> all = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            mood = 0.5 * mood + random.nextGaussian();
            double brightness = Math.max(0.15, Math.min(1, 0.65 + 0.3 * mood));
            all.add(day(FIRST.plusDays(i), brightness));
        }
        return HouseSeason.of(HOUSE, ZONE, all, FIRST.plusDays(days), HEAT);
    }

    /** One score a day at ten, by log odds of {@code slope} for each mol of light since sunrise above {@code even}. */
    static List<TakenScore> scores(HouseSeason season, double slope, double even, long seed) {
        Random random = new Random(seed);
        List<TakenScore> scores = new ArrayList<>();
        for (HouseDay day : season.days()) {
            Instant ten = at(day.day(), 10);
            double uniform = random.nextDouble();
            double latent = slope * (day.lightUntil(ten).moles() - even) + Math.log(uniform / (1 - uniform));
            int score = latent < -1.5 ? 0 : latent < 0 ? 1 : latent < 1.5 ? 2 : 3;
            scores.add(new TakenScore(HOUSE, Optional.empty(), ten, "Ida", PollenScore.of(score), false));
        }
        return scores;
    }
}
