package bagward.board.bench;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.Step;
import bagward.board.Assessment;
import bagward.board.Board;
import bagward.board.BoardBuilder;
import bagward.board.BoardInputs;
import bagward.board.BusyStation;
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

/** Cost of one tick with 500 open bags of seven days, readings every minute. Run by its main method. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class BoardBenchmark {
    private final BoardInputs inputs = BusyStation.inputs(500, 7);

    /** Assess, step and board. */
    @Benchmark
    public Board tick() {
        Assessment assessment = BoardBuilder.assess(inputs, AlarmBook.EMPTY);
        Step step = AlarmEngine.step(AlarmBook.EMPTY, inputs.now(), assessment.verdicts(), inputs.rules());
        return BoardBuilder.board(inputs, assessment, step.book());
    }

    /** Runs it. */
    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(BoardBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
