package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Cost of the estimate for one minute of one bag, and of learning from a week of a lent sensor. Run by its main method. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class BagBenchmark {
    private static final int WEEK = 7 * 24 * 60;
    private static final int EACH = 5;

    private final SimulatedSeason season = new SimulatedSeason(1, 7);
    private final Climate coarse = season.houseBySensor();
    private final Climate house = byTheMinute(coarse);
    private final SensoredBag sensored =
            SensoredBag.of(house, byTheMinute(season.lentSensor(season.run(season.bag(), Integer.MAX_VALUE))));
    private final BagBelief belief = BagBelief.prior(SimulatedBagsTest.film());

    /** A week of one bag by the minute, told as the cost of a minute, ns. */
    @Benchmark
    @OperationsPerInvocation(WEEK)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public BagClimate bagMinute() {
        return BagClimates.estimate(house, belief, house.grid().start(), Sky.UNKNOWN);
    }

    /** The lesson of a sensor that hung in a bag for a week, readings every minute, ms. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Optional<BagLesson> sensorWeek() {
        return BagLearning.lesson(sensored);
    }

    /** How a sensored bag sat over a week, ms. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Object sittingWeek() {
        return new Sitting(VapourHours.of(sensored), belief);
    }

    /** The same values held for five minutes each. */
    private static Climate byTheMinute(Climate climate) {
        TimeGrid grid = new TimeGrid(climate.grid().start(), Duration.ofMinutes(1), WEEK);
        return new Climate(
                held(climate.temperature(), grid), held(climate.humidity(), grid), held(climate.light(), grid));
    }

    private static RegularSeries held(RegularSeries series, TimeGrid grid) {
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = series.valueOrNaN(i / EACH);
        }
        return RegularSeries.of(grid, values);
    }

    /** Runs it. */
    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(BagBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
