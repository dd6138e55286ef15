package bagward.app;

import bagward.collector.MqttCollector;
import bagward.store.influx.InfluxLook;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a configuration. */
@Command(
        name = "check",
        description = "Read a configuration, say what is wrong with it, and start nothing.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Configuration to check.")
    private Path file = Path.of("bagward.yaml");

    @Option(names = "--connect", description = "Also ask the configured InfluxDB whether it is there and fit.")
    private boolean connect;

    @Override
    public Integer call() {
        Configuration found = ConfigurationReader.file(file, System.getenv());
        int bays =
                found.station().houses().stream().mapToInt(h -> h.bays().size()).sum();
        String counts = String.join(
                ", ",
                count(found.station().growing().size(), "house"),
                count(bays, "bay"),
                count(found.station().drying().size(), "drying place"),
                count(found.station().sensors().size(), "sensor"),
                count(found.materials().size(), "bag material"),
                count(found.rules().size(), "rule"),
                count(found.organisms().size(), "organism"));
        spec.commandLine()
                .getOut()
                .println(file + " is sound: " + found.station().name() + ", " + counts + ".");
        MqttCollector.remarks(found.collector().clientId(), found.sources())
                .forEach(remark -> spec.commandLine().getOut().println("Note: " + remark + "."));
        if (connect) {
            String store =
                    found.store().influx().map(InfluxLook::at).orElse("Readings are kept in the embedded store.");
            spec.commandLine().getOut().println(store);
        }
        return ExitCode.DONE;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
