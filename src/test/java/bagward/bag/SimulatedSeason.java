package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.Light;
import bagward.climate.MoistAir;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/** A greenhouse over some days with weather of its own, and bags of one material in it; same seed, same season. */
public final class SimulatedSeason {
    /** When every season begins; its hours are those of UTC. */
    public static final Instant START = Instant.parse("2026-04-10T12:00:00Z");
    /** Length of a cell. */
    public static final Duration STEP = Duration.ofMinutes(5);

    private static final int MINUTES_PER_CELL = 5;

    private final Random random;
    private final int minutes;
    private final double[] temperature;
    private final double[] vapour;
    private final double[] global;
    private final double[] cover;
    private final double meanClosure;
    private final double filmHeatGain;

    /** A season of some days. */
    public SimulatedSeason(long seed, int days) {
        // The first numbers of Random are alike for neighbouring seeds: whole blocks of seasons would share their
        // material.
        random = new Random(new SplittableRandom(seed).nextLong());
        minutes = days * 1440;
        temperature = new double[minutes];
        vapour = new double[minutes];
        global = new double[minutes];
        cover = new double[minutes];
        meanClosure = 0.35 + 0.35 * random.nextDouble();
        filmHeatGain = 0.15 + 0.2 * random.nextDouble();
        weather();
    }

    private void weather() {
        double nightTemperature = 8 + 8 * random.nextDouble();
        double nightHumidity = 72 + 16 * random.nextDouble();
        double brightest = 250 + 450 * random.nextDouble();
        double clear = random.nextDouble();
        double clouds = 0.5;
        double drift = 0;
        double humidityDrift = 0;
        double air = nightTemperature;
        for (int i = 0; i < minutes; i++) {
            double hour = (i / 60.0 + 12) % 24;
            double sun = Math.max(0, Math.sin(Math.PI * (hour - 5.5) / 13));
            if (i % 1440 == 0) {
                clear = random.nextDouble();
                drift = 0.6 * drift + 1.5 * random.nextGaussian();
                humidityDrift = 0.6 * humidityDrift + 4 * random.nextGaussian();
            }
            clouds += (0.3 + 0.7 * clear - clouds) / 40 + 0.05 * random.nextGaussian();
            clouds = Math.max(0.08, Math.min(1, clouds));
            global[i] = brightest * sun * clouds;
            double target = nightTemperature + drift + 0.02 * global[i] + (sun > 0 ? 3 : 0);
            air += (Math.min(target, 27) - air) / 50 + 0.02 * random.nextGaussian();
            temperature[i] = air;
            double humidity = nightHumidity + humidityDrift - 28 * sun * clouds + 2 * Math.sin(i / 23.0);
            vapour[i] = MoistAir.vapourKilopascals(air, Math.max(30, Math.min(99, humidity)));
            cover[i] = sun > 0 ? 1 : 1 + 6 * clear;
        }
    }

    /** What the house sensor says: offset of 1.5 points and 0.2 K, noise of 1 point and 0.1 K, light with 5 % error. */
    public Climate houseBySensor() {
        double offset = 1.5 * random.nextGaussian();
        double warm = 0.2 * random.nextGaussian();
        double gain = 1 + 0.05 * random.nextGaussian();
        int cells = minutes / MINUTES_PER_CELL;
        double[][] columns = new double[3][cells];
        for (int i = 0; i < cells; i++) {
            int m = i * MINUTES_PER_CELL + 2;
            double humidity = MoistAir.relativeHumidityPercent(temperature[m], vapour[m]);
            columns[0][i] = temperature[m] + warm + 0.1 * random.nextGaussian();
            columns[1][i] = within(humidity + offset + random.nextGaussian());
            columns[2][i] = global[m] * gain * Light.MICROMOLES_PER_GLOBAL_WATT;
        }
        return climate(columns);
    }

    /** A bag of the material: closures scatter by 0.12 between bags. */
    public SimulatedBag bag() {
        double closure = Math.max(0.05, Math.min(0.95, meanClosure + 0.12 * random.nextGaussian()));
        double pores = 1.4e-5 * (0.6 + 0.8 * random.nextDouble());
        return new SimulatedBag(closure, pores, filmHeatGain * (0.8 + 0.4 * random.nextDouble()));
    }

    /** The true climate of a bag that falls shut at a minute, or never if that lies beyond the end. */
    public Climate run(SimulatedBag bag, int shutAt) {
        return run(bag, shutAt, SimulatedBag::shut);
    }

    /** The true climate of a bag to which something happens at a minute. */
    Climate run(SimulatedBag bag, int eventAt, Consumer<SimulatedBag> event) {
        int cells = minutes / MINUTES_PER_CELL;
        double[][] columns = new double[3][cells];
        double wind = 1;
        for (int m = 0; m < minutes; m++) {
            if (m == eventAt) {
                event.accept(bag);
            }
            wind += (1 - wind) / 30 + 0.04 * random.nextGaussian();
            bag.minute(temperature[m], vapour[m], global[m], Math.max(0.5, wind), cover[m]);
            columns[0][m / MINUTES_PER_CELL] += bag.temperature() / MINUTES_PER_CELL;
            columns[1][m / MINUTES_PER_CELL] += bag.humidity() / MINUTES_PER_CELL;
        }
        Arrays.fill(columns[2], Double.NaN);
        return climate(columns);
    }

    /** What a lent sensor says: lag of about ten minutes, offset of 1.5 points, noise of 1 point, gaps. */
    public Climate lentSensor(Climate truth) {
        double offset = 1.5 * random.nextGaussian();
        double warm = 0.2 * random.nextGaussian();
        double[][] columns = {
            truth.temperature().toArray(),
            truth.humidity().toArray(),
            truth.light().toArray()
        };
        double lagged = columns[1][0];
        int gap = 0;
        for (int i = 0; i < columns[0].length; i++) {
            lagged += (columns[1][i] - lagged) * 0.4;
            columns[0][i] += warm + 0.1 * random.nextGaussian();
            columns[1][i] = within(lagged + offset + random.nextGaussian());
            gap = random.nextInt(800) == 0 ? random.nextInt(30) : gap - 1;
            if (gap > 0) {
                columns[0][i] = Double.NaN;
                columns[1][i] = Double.NaN;
            }
        }
        return climate(columns);
    }

    int minutes() {
        return minutes;
    }

    int randomMinute(int from) {
        return from + random.nextInt(minutes - from - 7 * 60);
    }

    private static double within(double percent) {
        return Math.max(0, Math.min(100, percent));
    }

    private static Climate climate(double[][] columns) {
        TimeGrid grid = new TimeGrid(START, STEP, columns[0].length);
        return new Climate(
                RegularSeries.of(grid, columns[0]),
                RegularSeries.of(grid, columns[1]),
                RegularSeries.of(grid, columns[2]));
    }
}
