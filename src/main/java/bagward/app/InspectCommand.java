package bagward.app;

import bagward.store.StoreFiles;
import bagward.store.StoreReport;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks a store or a copy of one through. */
@Command(
        name = "inspect",
        description = "Look the store of a station, or a backup, through for damage, and say what it holds.",
        mixinStandardHelpOptions = true)
final class InspectCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "COPY", description = "A backup; left out: the store of the station.")
    private Optional<Path> copy = Optional.empty();

    @Mixin
    private StoreFileOption store = new StoreFileOption();

    @Override
    public Integer call() {
        Path file = copy.orElseGet(store::database);
        StoreReport report = StoreFiles.inspect(file);
        if (report.damage().isPresent()) {
            spec.commandLine()
                    .getErr()
                    .println(file + " is damaged: " + report.damage().get()
                            + ". Restore it from a backup; keep this file until that is done.");
            return ExitCode.PART_FAILED;
        }
        spec.commandLine().getOut().println(file + " is sound: " + StoreWords.of(report) + ".");
        return ExitCode.DONE;
    }
}
