package bagward.site;

import bagward.board.Board;
import bagward.watch.SensorChecks;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;

/** Serves the invented station, to look at: arguments are the port and, if wanted, "calm" or "stale". */
final class SiteShow {
    private SiteShow() {}

    public static void main(String[] args) throws InterruptedException {
        Clock clock = Clock.fixed(Instant.parse("2027-05-11T07:40:00Z"), ZoneOffset.UTC);
        SampleWatch watch = new SampleWatch(clock);
        Duration since = args.length > 1 && args[1].equals("stale") ? Duration.ofMinutes(5) : Duration.ZERO;
        if (args.length > 1 && args[1].equals("calm")) {
            Board b = watch.board();
            watch.show(new Board(
                    b.at(),
                    b.station(),
                    b.zone(),
                    b.houses(),
                    b.bags(),
                    b.sensors(),
                    java.util.List.of(),
                    b.newestReading()));
        }
        if (args.length > 1 && args[1].equals("drying")) {
            watch.show(SampleDrying.on(watch.board()));
        }
        SampleStores stores = new SampleStores(clock.instant());
        SamplePollen pollen = new SamplePollen(clock, watch::register);
        try (Site site = new Site(
                settings(Integer.parseInt(args[0])),
                parts(
                        watch,
                        stores,
                        pollen,
                        new SampleDeliveries(watch),
                        new SampleRehearsals(clock.instant()),
                        Clock.offset(clock, since)))) {
            site.start();
            Thread.currentThread().join();
        }
    }

    /** The parts of a site around a watch; a spare sensor hung over two salts until one and nine hours ago. */
    static SiteParts parts(
            SampleWatch watch,
            SampleStores stores,
            SamplePollen pollen,
            SampleDeliveries deliveries,
            SampleRehearsals rehearsals,
            Clock clock) {
        Instant now = clock.instant();
        return new SiteParts(
                watch,
                stores,
                stores,
                new SensorChecks(new SampleChecks()),
                SampleChecks.night(SampleStation.SPARE, now.minus(Duration.ofHours(9)), now.minus(Duration.ofHours(1))),
                pollen,
                deliveries,
                new SampleSeasons(),
                SampleLots.book(watch, clock),
                rehearsals.desk,
                clock,
                1);
    }

    static SiteSettings settings(int port) {
        return new SiteSettings("127.0.0.1", port, WallScreen.USUAL, SampleStation.MATERIALS, SampleStation.CROPS, 90);
    }
}
