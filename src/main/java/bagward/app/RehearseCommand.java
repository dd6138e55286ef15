package bagward.app;

import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.bag.Register;
import bagward.bag.RegisterRules;
import bagward.board.BoardInputs;
import bagward.climate.SeriesId;
import bagward.climate.SortedReadings;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.store.SqliteStores;
import bagward.watch.SensorChecks;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
    /** Readings before the start that a bag of then still needs. */
    private static final Duration RUN_UP = Duration.ofDays(22);

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

    @Override
    public Integer call() {
        Configuration configuration = ConfigurationReader.file(file, System.getenv());
        Optional<Configuration> other =
                Optional.ofNullable(against).map(path -> ConfigurationReader.file(path, System.getenv()));
        Path store = configuration.store().folder().resolve("bagward.db");
        try (SqliteStores stores = SqliteStores.look(store);
                ReadingsPlace place = ReadingsPlace.open(configuration.store(), stores, Clock.systemUTC())) {
            rehearse(configuration, other, stores, place);
        }
        return ExitCode.DONE;
    }

    private void rehearse(
            Configuration configuration, Optional<Configuration> other, SqliteStores stores, ReadingsPlace place) {
        ZoneId zone = configuration.station().zone();
        List<SeriesId> series = configuration.station().sensors().stream()
                .flatMap(sensor -> sensor.series().stream())
                .toList();
        Instant end = end(series, place, zone);
        Instant start = from == null
                ? end.minus(Duration.ofDays(30))
                : from.atStartOfDay(zone).toInstant();
        if (!start.isBefore(end)) {
            throw refused("--from", String.valueOf(from), "lies at or after the end: give an earlier day");
        }
        SortedReadings readings = SortedReadings.of(
                series,
                new SensorChecks(stores.sensorChecks()).corrected(place.readings()),
                start.minus(RUN_UP),
                end.plusMillis(1));
        Register register = new RegisterRules(
                        configuration.station(),
                        configuration.materials().keySet(),
                        configuration.crops().ids())
                .apply(Register.EMPTY, stores.register().changes());
        List<Rehearsed> tried = new ArrayList<>();
        List<List<Rule>> sets = new ArrayList<>(List.of(configuration.rules()));
        other.map(Configuration::rules).ifPresent(sets::add);
        for (List<Rule> rules : sets) {
            tried.add(Rehearsed.of(
                    inputs(configuration, register, readings, rules, end),
                    start,
                    Duration.ofMinutes(every),
                    this::show));
        }
        print(sets, tried, start, end, zone, BagDays.between(register, start, end));
    }

    private static BoardInputs inputs(
            Configuration configuration, Register register, SortedReadings readings, List<Rule> rules, Instant end) {
        return new BoardInputs(
                end,
                configuration.station(),
                register,
                configuration.materials(),
                readings,
                rules,
                configuration.organisms(),
                configuration.crops());
    }

    private Instant end(List<SeriesId> series, ReadingsPlace place, ZoneId zone) {
        if (to != null) {
            return to.plusDays(1).atStartOfDay(zone).toInstant();
        }
        return series.stream()
                .flatMap(id -> place.readings().newest(id, Instant.now(Clock.systemUTC())).stream())
                .map(reading -> reading.measuredAt())
                .max(Instant::compareTo)
                .orElseThrow(() -> refused("store", "", "holds no readings yet: let the station run for some days"));
    }

    private static RefusedInputException refused(String place, String found, String rule) {
        return new RefusedInputException(List.of(Fault.of(place, found, rule)));
    }

    private int shown;

    private synchronized void show(int percent) {
        if (percent / 10 > shown / 10) {
            spec.commandLine().getErr().printf("  %3d %% of the heads%n", percent / 10 * 10);
            spec.commandLine().getErr().flush();
        }
        shown = percent == 100 ? 0 : Math.max(shown, percent);
    }

    private void print(
            List<List<Rule>> sets, List<Rehearsed> tried, Instant start, Instant end, ZoneId zone, double bagDays) {
        PrintWriter out = spec.commandLine().getOut();
        double days = Duration.between(start, end).toSeconds() / 86_400.0;
        out.printf(
                Locale.ROOT,
                "From %s to %s, a look every %d min, %.0f bag-days.%n%n",
                start.atZone(zone).toLocalDateTime(),
                end.atZone(zone).toLocalDateTime(),
                every,
                bagDays);
        Set<RuleId> ids = new LinkedHashSet<>();
        sets.forEach(rules -> rules.forEach(rule -> ids.add(rule.id())));
        row(out, "alarms of", tried.size() == 1 ? List.of("this file") : List.of("this file", "the other"));
        for (RuleId id : ids) {
            row(
                    out,
                    id.value(),
                    tried.stream().map(t -> String.valueOf(t.times(id))).toList());
        }
        row(
                out,
                "all",
                tried.stream().map(t -> String.valueOf(t.load().raised())).toList());
        row(
                out,
                "a day",
                tried.stream().map(t -> number(t.load().raised() / days)).toList());
        row(
                out,
                "most on one day",
                tried.stream().map(t -> String.valueOf(t.mostOnADay())).toList());
        List<String> pressing = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            pressing.add(bagDays == 0 ? "no bags" : number(100 * tried.get(i).pressing(sets.get(i)) / bagDays));
        }
        row(out, "medium and high, a day for 100 bags", pressing);
        row(
                out,
                "that chatter",
                tried.stream()
                        .map(t -> String.valueOf(t.load().chattering().size()))
                        .toList());
        out.printf(
                "%nNot rehearsed: outlooks of a night, bags found shut or off by their sensor, trouble of the system, what people do.%n");
    }

    private static void row(PrintWriter out, String name, List<String> values) {
        out.printf("%-38s", name);
        values.forEach(value -> out.printf("%12s", value));
        out.println();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
