package bagward.app;

import bagward.collector.StationClock;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a station. */
@Command(name = "run", description = "Watch a station until stopped (Ctrl-C).", mixinStandardHelpOptions = true)
final class RunCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Configuration; config/bagward.yaml is a commented example.")
    private Path file = Path.of("bagward.yaml");

    @Override
    public Integer call() throws InterruptedException {
        Configuration configuration = ConfigurationReader.file(file, System.getenv());
        PrintWriter out = spec.commandLine().getOut();
        StationClock clock = StationClock.watched(Clock.systemUTC(), System::nanoTime);
        UntilStopped until = UntilStopped.begin();
        Running running = until.closing(new Running(configuration, clock));
        running.open();
        out.println("Bagward watches " + configuration.station().name() + ".");
        out.println("Pages: " + running.address() + "   wall screen: " + running.address() + "wall");
        out.println("Broker: " + running.brokerLink().url() + "   stop with Ctrl-C");
        out.flush();
        until.await();
        return ExitCode.DONE;
    }
}
