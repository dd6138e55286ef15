package bagward.app;

import bagward.store.StoreFiles;
import bagward.store.StoreReport;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Copies the store of a station. */
@Command(
        name = "backup",
        description = "Copy the store of a station into one file, while it runs or not, and look the copy through.",
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "File to write; there must be no such file yet.")
    private Path copy = Path.of("");

    @Mixin
    private StoreFileOption store = new StoreFileOption();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Path database = store.database();
        long megabytes = database.toFile().length() >> 20;
        StoreReport report = StoreFiles.copy(database, copy, written -> {
            out.printf("  %d of at most %d MB%n", written >> 20, megabytes);
            out.flush();
        });
        out.println(copy + " is whole and sound: " + StoreWords.of(report) + ".");
        return ExitCode.DONE;
    }
}
