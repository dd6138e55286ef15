package bagward.demo;

import bagward.bag.DryingStep;
import bagward.bag.MeasuredMoisture;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.ReadingSource;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Site;
import bagward.station.HouseId;
import bagward.station.Sensor;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * The invented breeding station of the demo: its place, the times of its story, and the documents that a real station
 * would have.
 */
public final class DemoStation {
    /** The moment at which the demo begins: a spring morning before work. */
    public static final Instant NOW = Instant.parse("2026-04-22T04:40:00Z");

    /** From when on the sensors have been heard: nine days before. */
    public static final Instant HISTORY_BEGINS = NOW.minus(Duration.ofDays(9));

    /** Zone of the station. */
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    /** Seed of the demo unless another one is wanted. */
    public static final long SEED = 1;

    /** Where the station is. */
    static final Site SITE = new Site(54.12, 10.35, 31);

    /** When the first spare sensor was hung into a bag that stays well. */
    static final Instant FIRST_LENT = Instant.parse("2026-04-16T08:10:00Z");

    /** When the second spare sensor was hung into the bag that later falls shut. */
    static final Instant SECOND_LENT = Instant.parse("2026-04-17T07:30:00Z");

    /** When that bag slides down. */
    static final Instant FALLS_SHUT = Instant.parse("2026-04-20T16:30:00Z");

    /** When the first harvested heads were hung into the seed room. */
    static final Instant FIRST_HUNG = Instant.parse("2026-04-14T09:40:00Z");

    /** When the next ones were hung there. */
    static final Instant SECOND_HUNG = Instant.parse("2026-04-20T09:10:00Z");

    /** When the dryer of the seed room trips. */
    static final Instant DRYER_TRIPS = Instant.parse("2026-04-21T17:10:00Z");

    /** When a sensor with an empty battery is heard for the last time. */
    static final Instant FALLS_SILENT = Instant.parse("2026-04-22T01:52:00Z");

    /** The sensor that falls silent. */
    private static final SensorId SILENT = new SensorId("linden-c-air");

    /** A sensor whose messages carry no time: it has no history and is heard live only. */
    private static final SensorId ONLY_LIVE = new SensorId("alder-door");

    /** A weak battery and bad radio lose messages now and then. */
    private static final Duration MAY_BE_LOST = Duration.ofMinutes(20);

    private static final Optional<HouseId> SEED_ROOM = Optional.of(new HouseId("seed-room"));

    private static final String FOLDER = "/bagward/packaged/demo-data/";

    private DemoStation() {}

    /** The configuration, in the format of a real one. */
    public static String configuration() {
        return read("demo.yaml");
    }

    /** The bags, in the format of the CSV import. */
    public static String bags() {
        return read("bags.csv");
    }

    /**
     * What was entered beside the import: heads that were harvested or lost, and where their seed lots hang; one was packed, and
     * one was first entered for a place where it never hung.
     */
    public static List<RegisterChange> furtherChanges() {
        return List.of(
                new RegisterChange.Harvest(
                        new TagCode("MH-0301"), Instant.parse("2026-04-14T09:05:00Z"), "11 pods, dry"),
                new RegisterChange.Harvest(
                        new TagCode("MH-0302"), Instant.parse("2026-04-14T09:20:00Z"), "8 pods, two shattered"),
                new RegisterChange.Harvest(
                        new TagCode("MH-0304"), Instant.parse("2026-04-20T08:40:00Z"), "10 pods, dry"),
                new RegisterChange.Lose(
                        new TagCode("MH-0303"), Instant.parse("2026-03-19T10:15:00Z"), "stalk broken at the tie"),
                new RegisterChange.HangToDry(new TagCode("MH-0301"), FIRST_HUNG, SEED_ROOM),
                new RegisterChange.HangToDry(new TagCode("MH-0302"), FIRST_HUNG, SEED_ROOM),
                new RegisterChange.Pack(
                        new TagCode("MH-0302"),
                        Instant.parse("2026-04-21T13:50:00Z"),
                        "clean, 41 seeds",
                        Optional.of(MeasuredMoisture.of(7.1, "hand meter, three samples"))),
                new RegisterChange.HangToDry(
                        new TagCode("MH-0304"), Instant.parse("2026-04-20T08:50:00Z"), Optional.empty()),
                new RegisterChange.WithdrawDrying(
                        new TagCode("MH-0304"), Instant.parse("2026-04-20T08:50:00Z"), DryingStep.HUNG),
                new RegisterChange.HangToDry(new TagCode("MH-0304"), SECOND_HUNG, SEED_ROOM));
    }

    /**
     * Whether the history of every sensor has reached a store up to its end, but for what a sensor may lose. Messages of one topic come
     * nearly in order, those of several topics do not.
     */
    public static boolean historyIsIn(ReadingSource readings, List<Sensor> sensors) {
        return sensors.stream()
                .flatMap(sensor -> sensor.series().stream())
                .filter(series -> !series.sensor().equals(ONLY_LIVE))
                .allMatch(series -> readings.newest(series, NOW)
                        .filter(reading ->
                                reading.measuredAt().isAfter(end(series).minus(MAY_BE_LOST)))
                        .isPresent());
    }

    private static Instant end(SeriesId series) {
        return series.sensor().equals(SILENT) ? FALLS_SILENT : NOW;
    }

    private static String read(String name) {
        try (InputStream in = DemoStation.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + FOLDER + name
                        + " is missing from it; build it again with 'mvn package'");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
