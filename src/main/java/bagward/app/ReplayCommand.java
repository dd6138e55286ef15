package bagward.app;

import bagward.collector.Replay;
import bagward.collector.ReplayPlan;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays a recorded file into the broker of a configuration. */
@Command(
        name = "replay",
        description =
                "Play a recorded CSV file through MQTT with its recorded times, into the broker of a running station.",
        mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "CSV", description = "Recorded file with a header line.")
    private Path csv = Path.of("");

    @Option(
            names = "--plan",
            required = true,
            paramLabel = "PLAN",
            description = "YAML that says which column is the time and which columns go to which topic.")
    private Path plan = Path.of("");

    @Option(
            names = "--config",
            required = true,
            paramLabel = "FILE",
            description = "Configuration of the station, for its broker.")
    private Path configuration = Path.of("");

    @Option(
            names = "--speed",
            paramLabel = "N",
            description = "How many times as fast as it was recorded; left out: as fast as the broker takes it.")
    private double speed;

    private int shown;

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Configuration station = ConfigurationReader.file(configuration, System.getenv());
        ReplayPlan read = plan();
        OptionalDouble times = speed > 0 ? OptionalDouble.of(speed) : OptionalDouble.empty();
        long messages = new Replay(station.broker().link(), times, p -> show(p, out)).play(csv, read);
        out.printf(
                "%d messages are with the broker at %s.%n",
                messages, station.broker().link().url());
        return ExitCode.DONE;
    }

    private ReplayPlan plan() {
        Inspection inspection = new Inspection();
        try {
            Section top = Section.parse(String.valueOf(plan.getFileName()), Files.readString(plan), inspection);
            ReplayPlan read = ReplayPlan.read(top).orElse(new ReplayPlan("", List.of()));
            inspection.throwIfRefused();
            return read;
        } catch (IOException e) {
            throw new RefusedInputException(List.of(
                    Fault.of(plan.toString(), "", "cannot be read as UTF-8 text: give the path of a replay plan")));
        }
    }

    private void show(Replay.Progress progress, PrintWriter out) {
        int tenths = (int) (10L * progress.rows() / Math.max(1, progress.ofRows()));
        if (tenths > shown) {
            shown = tenths;
            out.printf("  %3d %%  up to %s%n", tenths * 10, progress.at());
            out.flush();
        }
    }
}
