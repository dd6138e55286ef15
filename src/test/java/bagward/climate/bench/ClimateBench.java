package bagward.climate.bench;

import bagward.climate.MoistAir;
import bagward.climate.Reading;
import bagward.climate.RegularSeries;
import bagward.climate.Resampler;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Site;
import bagward.climate.Sun;
import bagward.climate.SunPosition;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** What one dew point, one sun position and one day of one-minute readings cost. Run {@link #main} to measure. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ClimateBench {
    private static final int MINUTES_OF_DAY = 1440;
    private static final Site VALLEY = new Site(51.98, 5.66, 10);
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final Instant start = Instant.parse("2026-04-20T00:00:00Z");
    private final TimeGrid day = new TimeGrid(start, MINUTE, MINUTES_OF_DAY);
    private final List<Reading> readings = oneMinuteReadings(start);
    private int turn;

    /** Runs all of them. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(ClimateBench.class.getSimpleName())
                        .build())
                .run();
    }

    /** One dew point from temperature and humidity. */
    @Benchmark
    public double dewPoint() {
        turn = (turn + 1) & 1023;
        return MoistAir.dewPointDegrees(10 + turn / 50.0, 40 + turn / 20.0);
    }

    /** One position of the sun. */
    @Benchmark
    public SunPosition sunPosition() {
        turn = (turn + 1) & 1023;
        return Sun.position(VALLEY, start.plusSeconds(60L * turn));
    }

    /** One day of one-minute readings onto cells of a minute. */
    @Benchmark
    public RegularSeries dayResampled() {
        return Resampler.onto(day, readings, MINUTE.multipliedBy(3));
    }

    private static List<Reading> oneMinuteReadings(Instant start) {
        SeriesId series = new SeriesId(new SensorId("bench"), Quantity.TEMPERATURE);
        Random random = new Random(1);
        List<Reading> readings = new ArrayList<>();
        for (int minute = 0; minute < MINUTES_OF_DAY; minute++) {
            long second = 60L * minute + random.nextInt(20);
            readings.add(Reading.of(series, start.plusSeconds(second), 20 + random.nextGaussian()));
        }
        return readings;
    }
}
