package bagward.app;

import bagward.bag.BagCsv;
import bagward.bag.RegisterChange;
import bagward.collector.StationClock;
import bagward.demo.DemoClock;
import bagward.demo.DemoFeed;
import bagward.demo.DemoPollen;
import bagward.demo.DemoPublisher;
import bagward.demo.DemoStation;
import bagward.document.Inspection;
import bagward.watch.WatchSettings;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the demo in a folder of its own that is left behind nowhere. */
@Command(
        name = "demo",
        description = "Show an invented station whose climate is simulated and sent over MQTT.",
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
    private static final Duration PATIENCE = Duration.ofMinutes(10);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--speed",
            paramLabel = "N",
            defaultValue = "30",
            description = "Simulated seconds in a second, 1 to 600; 360 lets a day pass in four minutes. Usual: 30.")
    private double speed = 30;

    @Option(names = "--seed", paramLabel = "N", description = "Another number, another season. Usual: 1.")
    private long seed = DemoStation.SEED;

    @Option(names = "--port", paramLabel = "PORT", description = "Port of the pages. Usual: 8420.")
    private int port = 8420;

    @Option(names = "--broker-port", paramLabel = "PORT", description = "Port of the MQTT broker. Usual: 18830.")
    private int brokerPort = 18_830;

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        DemoClock clock = DemoClock.standing(DemoStation.NOW, speed, DemoStation.ZONE);
        UntilStopped until = UntilStopped.begin();
        TemporaryFolder folder = until.closing(TemporaryFolder.make("bagward-demo"));
        Running running = until.closing(new Running(
                configuration(folder.path()),
                StationClock.trusted(clock, speed),
                WatchSettings.USUAL.forClockSpeed(speed)));
        DemoPublisher publisher = until.closing(
                new DemoPublisher(running.brokerLink(), new DemoFeed(seed), clock, new HistoryProgress(out)));
        play(running, publisher, out);
        until.await();
        return ExitCode.DONE;
    }

    private void play(Running running, DemoPublisher publisher, PrintWriter out) throws InterruptedException {
        out.println(
                "The demo plays nine days of messages, and thirty more of its houses alone, into its own broker before it begins.");
        out.flush();
        publisher.start();
        if (!publisher.awaitHistory(PATIENCE)) {
            throw new PartFailedException(
                    "the broker did not take the history within ten minutes: see the log above",
                    new IOException("history not taken"));
        }
        awaitStored(running);
        running.watch().change(changes(), "demo");
        running.pollen().enter(DemoPollen.scores(seed));
        running.open();
        out.printf(
                "%nMirrenholt breeding station (invented). Pages: %s   wall screen: %swall%n",
                running.address(), running.address());
        out.printf("The demo clock runs %.0f times as fast as yours. Stop with Ctrl-C.%n", speed);
        out.flush();
    }

    /**
     * Waits until what the broker took is on disk: bags entered before that would raise alarms of sensors that are silent
     * only because their history is still on its way. After half a minute the demo goes on without.
     */
    private static void awaitStored(Running running) throws InterruptedException {
        for (int look = 0; look < 300 && !DemoStation.historyIsIn(running.readings(), running.sensors()); look++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private Configuration configuration(Path folder) throws IOException {
        String text = DemoStation.configuration()
                + "\nbroker:\n  port: " + brokerPort
                + "\nstore:\n  folder: store"
                + "\npage:\n  port: " + port + "\n";
        Files.writeString(folder.resolve("demo.yaml"), text);
        return new ConfigurationReader(folder, Map.of()).read("demo.yaml", text, new Inspection());
    }

    private static List<RegisterChange> changes() {
        List<RegisterChange> changes = new ArrayList<>(new BagCsv(DemoStation.ZONE).read(DemoStation.bags()));
        changes.addAll(DemoStation.furtherChanges());
        return changes;
    }
}
