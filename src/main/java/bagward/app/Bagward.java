package bagward.app;

import bagward.fault.BagwardException;
import bagward.fault.RefusedInputException;
import java.io.PrintWriter;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point: the command line. */
@Command(
        name = "bagward",
        description = "Watches the climate around and inside pollination bags in a greenhouse.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            RunCommand.class,
            DemoCommand.class,
            CheckCommand.class,
            ReplayCommand.class,
            RehearseCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            InspectCommand.class,
            VersionCommand.class,
            CommandLine.HelpCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:a defect of the program; please report it with the log",
            "2:wrong command line",
            "3:a configuration or file was refused; nothing was started or changed",
            "4:a part could not start or stopped: address in use, store locked or damaged, broker out of reach"
        })
public final class Bagward {
    private Bagward() {}

    /** Runs the command line and ends with its exit code. */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    static CommandLine commandLine() {
        return new CommandLine(new Bagward())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((failure, command, parsed) -> explain(failure, command.getErr()));
    }

    private static int explain(Exception failure, PrintWriter err) {
        if (failure instanceof RefusedInputException refused) {
            refused.faults().forEach(fault -> err.println(fault.sentence()));
            int count = refused.faults().size();
            err.println(count == 1 ? "1 fault; nothing was started." : count + " faults; nothing was started.");
            return ExitCode.REFUSED;
        }
        if (failure instanceof BagwardException known) {
            err.println(known.getMessage());
            return ExitCode.PART_FAILED;
        }
        LoggerFactory.getLogger(Bagward.class).error("a defect ended the program", failure);
        err.println("Bagward ended by a defect: " + failure + ". Please report it with the log above.");
        return ExitCode.DEFECT;
    }
}
