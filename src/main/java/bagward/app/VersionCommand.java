package bagward.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the version. */
@Command(name = "version", description = "Print the version and end.")
final class VersionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        for (String line : new Version().getVersion()) {
            spec.commandLine().getOut().println(line);
        }
        return ExitCode.DONE;
    }
}
