package bagward.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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

    @Override
    public Integer call() {
        Configuration found = ConfigurationReader.file(file, System.getenv());
        int bays =
                found.station().houses().stream().mapToInt(h -> h.bays().size()).sum();
        spec.commandLine()
                .getOut()
                .printf(
                        "%s is sound: %s, %d houses, %d bays, %d sensors, %d bag materials, %d rules, %d organisms.%n",
                        file,
                        found.station().name(),
                        found.station().houses().size(),
                        bays,
                        found.station().sensors().size(),
                        found.materials().size(),
                        found.rules().size(),
                        found.organisms().size());
        return ExitCode.DONE;
    }
}
