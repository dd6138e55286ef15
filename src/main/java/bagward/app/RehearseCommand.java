package bagward.app;

import bagward.alarm.Rule;
import bagward.climate.Reading;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.watch.rehearsal.RehearsalPass;
import bagward.watch.rehearsal.RehearsalResult;
import bagward.watch.rehearsal.RehearsedDays;
import bagward.watch.rehearsal.RehearsedStation;
import bagward.watch.rehearsal.StoredPast;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs alarm rules over the stored past of a station. */
@Command(
        name = "rehearse",
        description = "Try alarm rules on the stored past: which alarms would have come, and how many a day."
                + " Also while the station runs; nothing is changed.",
        mixinStandardHelpOptions = true)
final class RehearseCommand implements Callable<Integer> {
    private static final int USUAL_DAYS = 30;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FILE", description = "Configuration of the station, with the rules to try.")
    private Path file = Path.of("bagward.yaml");

    @Option(
            names = "--against",
            paramLabel = "OTHER",
            description = "Another configuration of the same station, whose rules are shown beside them.")
    private @Nullable Path against;

    @Option(names = "--from", paramLabel = "DAY", description = "First day, such as 2027-04-01; left out: 30 days.")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DAY", description = "Last day; left out: up to the newest reading.")
    private @Nullable LocalDate to;

    @Option(
            names = "--every",
            paramLabel = "MINUTES",
            description = "How often the rules look; ${DEFAULT-VALUE} if left out.")
    private int every = 10;

    private int shownTenth;

    @Override
    public Integer call() {
        Configuration configuration = ConfigurationReader.file(file, System.getenv());
        List<List<Rule>> sets = new ArrayList<>(List.of(configuration.rules()));
        if (against != null) {
            sets.add(ConfigurationReader.file(against, System.getenv()).rules());
        }
        RehearsedStation station = configuration.rehearsedStation();
        try (StoredPast past = PastOnDisk.open(configuration.store())) {
            ZoneId zone = configuration.station().zone();
            RehearsalResult result = new RehearsalPass(station, days(station, past, zone), true, this::show)
                    .run(past, sets)
                    .orElseThrow();
            new RehearsalTable(spec.commandLine().getOut(), result).print(zone);
        }
        return ExitCode.DONE;
    }

    private RehearsedDays days(RehearsedStation station, StoredPast past, ZoneId zone) {
        Instant end = end(station, past, zone);
        Instant start = from == null
                ? end.minus(Duration.ofDays(USUAL_DAYS))
                : from.atStartOfDay(zone).toInstant();
        if (!start.isBefore(end)) {
            throw refused("--from", String.valueOf(from), "lies at or after the end: give an earlier day");
        }
        return new RehearsedDays(start, end, Duration.ofMinutes(every));
    }

    private Instant end(RehearsedStation station, StoredPast past, ZoneId zone) {
        if (to != null) {
            return to.plusDays(1).atStartOfDay(zone).toInstant();
        }
        return station.series().stream()
                .flatMap(id -> past.readings().newest(id, Instant.now(Clock.systemUTC())).stream())
                .map(Reading::measuredAt)
                .max(Instant::compareTo)
                .orElseThrow(() -> refused("store", "", "holds no readings yet: let the station run for some days"));
    }

    private static RefusedInputException refused(String place, String found, String rule) {
        return new RefusedInputException(List.of(Fault.of(place, found, rule)));
    }

    private synchronized boolean show(double share) {
        int tenth = (int) (10 * share);
        if (tenth > shownTenth) {
            spec.commandLine().getErr().printf("  %3d %% of the heads%n", tenth * 10);
            spec.commandLine().getErr().flush();
        }
        shownTenth = Math.max(shownTenth, tenth);
        return true;
    }
}
