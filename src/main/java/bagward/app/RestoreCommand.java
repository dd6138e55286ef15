package bagward.app;

import bagward.store.StoreFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a copy back in place of the store of a station. */
@Command(
        name = "restore",
        description = "Put a backup in place of the store of a station that does not run.",
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "A file that the command backup, or the nightly backup, wrote.")
    private Path copy = Path.of("");

    @Option(
            names = "--replace",
            description = "Move a store that is there aside; without it, such a store is left alone.")
    private boolean replace;

    @Mixin
    private StoreFileOption store = new StoreFileOption();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Path database = store.database();
        Optional<Path> aside =
                StoreFiles.restore(copy, database, replace, Clock.systemUTC().instant());
        out.println(database + " now holds " + StoreWords.of(StoreFiles.inspect(database)) + ".");
        aside.ifPresent(path -> out.println("What was there before is " + path + "; delete it when you are content."));
        return ExitCode.DONE;
    }
}
