package bagward.app;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.collector.BrokerLink;
import bagward.collector.BrokerSettings;
import bagward.collector.CollectorState;
import bagward.collector.EmbeddedBroker;
import bagward.collector.MqttCollector;
import bagward.collector.StationClock;
import bagward.notify.OwnTopics;
import bagward.site.Site;
import bagward.site.SiteParts;
import bagward.station.Sensor;
import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import bagward.watch.Health;
import bagward.watch.LiveWatch;
import bagward.watch.PollenKeeper;
import bagward.watch.PollenWatch;
import bagward.watch.SensorChecks;
import bagward.watch.Watch;
import bagward.watch.WatchParts;
import bagward.watch.WatchSettings;
import bagward.watch.WatchedParts;
import bagward.watch.rehearsal.RehearsalDesk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;

/** All parts, wired and running; closed in the reverse order of their start. */
final class Running implements AutoCloseable {
    private final Parts started = new Parts();
    private final Configuration configuration;
    private final SystemProbe probe;
    private final ReadingsPlace place;
    private final Keeping keeping;
    private final Spooling spooling;
    private final ReadingSource readings;
    private final LiveWatch watch;
    private final PollenKeeper pollen;
    private final Delivering delivering;
    private final Site site;
    private final MqttCollector collector;

    /**
     * Starts store, broker and collector; the watch and the pages follow with {@link #open}.
     *
     * @throws bagward.fault.BagwardException if a part cannot start; those before it are closed again
     */
    Running(Configuration configuration, StationClock clock) {
        this(configuration, clock, WatchSettings.USUAL);
    }

    /** The same with a watch that runs otherwise than usual. */
    Running(Configuration configuration, StationClock stationClock, WatchSettings settings) {
        this.configuration = configuration;
        Clock clock = stationClock.clock();
        this.probe = new SystemProbe(configuration.store().folder(), stationClock);
        try {
            SqliteStores stores = started.add(SqliteStores.open(database(configuration), clock));
            place = started.add(ReadingsPlace.open(configuration.store(), stores, clock));
            keeping = started.add(new Keeping(
                    configuration.keeping(),
                    configuration.station(),
                    database(configuration),
                    stores,
                    place.readings(),
                    clock,
                    () -> watch().register()));
            spooling =
                    started.add(Spooling.open(configuration.store(), keeping.readings(), stores.quarantine(), clock));
            readings = spooling.readings();
            SensorChecks checks = new SensorChecks(stores.sensorChecks());
            if (configuration.broker() instanceof BrokerSettings.Embedded embedded) {
                started.add(EmbeddedBroker.start(embedded));
            }
            place.awaitReadable();
            collector = new MqttCollector(
                    stationClock,
                    configuration.broker(),
                    configuration
                            .collector()
                            .unlisting(OwnTopics.of(configuration.deliveries().mqtt())),
                    configuration.sources(),
                    spooling.readings(),
                    spooling.quarantine(),
                    stores.subscriptions(),
                    this::stored);
            delivering = started.add(new Delivering(configuration, stores, clock));
            // The first board asks these how they are, so they are made first; the collector is started last.
            watch = started.add(new LiveWatch(
                    parts(configuration, stores, spooling.readings(), checks, clock), this::watched, settings));
            pollen = started.add(new PollenKeeper(
                    clock,
                    configuration.station(),
                    configuration.crops().usual().heat(),
                    () -> checks.corrected(readings),
                    stores.pollen(),
                    watch::register,
                    settings));
            started.add(collector);
            site = started.add(new Site(
                    configuration.site(),
                    new SiteParts(
                            watch,
                            stores.quarantine(),
                            stores.alarms(),
                            checks,
                            readings,
                            pollen,
                            delivering.desk(),
                            keeping.seasons(),
                            Lots.of(configuration, watch, readings, checks, clock),
                            started.add(new RehearsalDesk(
                                    configuration.rehearsedStation(),
                                    configuration.rules(),
                                    () -> PastOnDisk.open(configuration.store()))),
                            clock,
                            stationClock.pace())));
            collector.start();
        } catch (RuntimeException e) {
            close();
            throw e;
        }
    }

    private static Path database(Configuration configuration) {
        try {
            Files.createDirectories(configuration.store().folder());
        } catch (IOException e) {
            throw new PartFailedException(
                    "the store folder " + configuration.store().folder()
                            + " cannot be made: give another one under store.folder",
                    e);
        }
        return configuration.store().folder().resolve(StoreFileOption.DATABASE);
    }

    private static WatchParts parts(
            Configuration configuration, SqliteStores stores, ReadingStore readings, SensorChecks checks, Clock clock) {
        return new WatchParts(
                clock,
                configuration.station(),
                configuration.materials(),
                configuration.rules(),
                configuration.organisms(),
                configuration.crops(),
                configuration.foliage(),
                readings,
                stores.quarantine(),
                checks,
                stores.register(),
                stores.alarms());
    }

    private void stored(List<Reading> news) {
        watch.stored(news);
        pollen.stored(news);
    }

    private WatchedParts watched() {
        CollectorState state = collector.state();
        List<Health.Part> parts = new ArrayList<>();
        parts.add(new Health.Part("collector", state.connected(), state.says()));
        parts.addAll(spooling.parts(state));
        parts.addAll(place.parts());
        parts.addAll(Gateways.parts(collector));
        parts.add(delivering.part());
        parts.add(probe.disk());
        parts.add(probe.clock());
        parts.addAll(keeping.parts());
        return new WatchedParts(
                parts,
                state.lastMessageAt(),
                spooling.intake(state.counts()),
                probe.state(spooling.readings().state(), collector.sensorClocks(), collector.offline()));
    }

    /** Begins to tick and opens the pages. */
    void open() {
        delivering.start(watch, pollen::newest);
        watch.start();
        pollen.start();
        keeping.start();
        site.start();
    }

    /** Address of the pages. */
    String address() {
        String host = configuration.site().host();
        return "http://" + (host.equals("0.0.0.0") || host.equals("127.0.0.1") ? "localhost" : host) + ":" + site.port()
                + "/";
    }

    /** The sensors of the station. */
    List<Sensor> sensors() {
        return configuration.station().sensors();
    }

    /** How many messages were dealt with since the start. */
    long messages() {
        return collector.state().counts().messages();
    }

    /** Pollen scores and outlooks. */
    PollenWatch pollen() {
        return pollen;
    }

    /** What is stored. */
    ReadingSource readings() {
        return readings;
    }

    /** The running watch. */
    Watch watch() {
        return watch;
    }

    /** Where other clients reach the broker. */
    BrokerLink brokerLink() {
        return configuration.broker().link();
    }

    @Override
    public void close() {
        started.close();
    }
}
