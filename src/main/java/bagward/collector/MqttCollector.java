package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.payload.MessageDecoder;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TopicFilter;
import bagward.collector.sparkplug.NodeState;
import bagward.store.QuarantineStore;
import bagward.store.ReadingStore;
import bagward.store.SubscriptionStore;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Collects the messages of sensors from a broker: a message is acknowledged after its readings, or its line in the
 * quarantine, are on disk. What was not acknowledged the broker sends again; the store takes a reading twice as one.
 *
 * <p>Readings without a time of their own get the time of arrival; when the process dies between commit and
 * acknowledgement, a repeated one is known by its value among the newest of its series. Send times with the readings
 * where the sensor can.
 *
 * <p>Topics that nobody configured are heard over a second connection without a session, at quality 0, so that what they
 * say can neither hold up nor repeat what is collected.
 */
public final class MqttCollector implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(MqttCollector.class);
    private static final Backoff RECONNECT = new Backoff(Duration.ofMillis(250), Duration.ofSeconds(30));
    private static final List<TopicFilter> EVERYTHING = List.of(new TopicFilter("#"));
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private final StationClock clock;
    private final CollectorSettings settings;
    private final SensorClocks sensorClocks = new SensorClocks();
    private final MessageDecoder decoder;
    private final Tally tally = new Tally();
    private final HeardTopics heard;
    private final Lanes lanes;
    private final Sessions sessions;
    private final HandOff handOff;
    private final Mover mover;
    private final Connector hearing;
    private final Committer committer;

    /**
     * Prepares a collector; nothing happens before {@link #start}.
     *
     * @param clock the station's clock
     * @param broker where messages come from
     * @param settings how they are collected
     * @param sources the sensors
     * @param readings takes the readings
     * @param quarantine takes what cannot be used
     * @param subscriptions what was asked for at brokers before
     * @param afterCommit told the readings of each batch once they are on disk; must not block for long
     */
    public MqttCollector(
            StationClock clock,
            BrokerSettings broker,
            CollectorSettings settings,
            List<SensorSource> sources,
            ReadingStore readings,
            QuarantineStore quarantine,
            SubscriptionStore subscriptions,
            Consumer<List<Reading>> afterCommit) {
        this.clock = clock;
        this.settings = settings;
        this.decoder = new MessageDecoder(sources, settings.futureTolerance(), settings.pastTolerance());
        this.heard = new HeardTopics(quarantine, clock.clock());
        this.lanes = Lanes.of(settings.clientId(), sources);
        this.sessions = new Sessions(broker, lanes.all(), subscriptions, clock.clock(), this::receive);
        this.handOff = new HandOff(sessions.clients(), Math.min(settings.batchMost(), broker.window()));
        Handover handover = new Handover();
        this.mover = new Mover(sessions.all(), handOff, handover);
        this.hearing = new Connector(
                broker.link(),
                new Connection.Plan(settings.clientId() + "-hearing", kept -> EVERYTHING, 0, false, this::hear),
                clock.clock(),
                RECONNECT);
        this.committer = new Committer(new Committer.Parts(
                clock,
                handOff,
                sessions,
                handover,
                decoder,
                readings,
                quarantine,
                heard,
                sensorClocks,
                new ClockRepair(series(sources), readings, afterCommit),
                tally,
                settings.batchLinger(),
                afterCommit,
                this::askForBirths,
                this::whenIdle));
    }

    private static List<SeriesId> series(List<SensorSource> sources) {
        return sources.stream()
                .flatMap(source ->
                        source.format().places().stream().map(place -> new SeriesId(source.sensor(), place.quantity())))
                .distinct()
                .toList();
    }

    /** Starts; the first connection is tried again until it stands. */
    public void start() {
        lanes.remarks().forEach(remark -> LOG.warn("{}", remark));
        committer.start();
        heard.start();
        sessions.start();
        mover.start();
        if (settings.hearAll()) {
            hearing.start();
        }
    }

    /** How it is. */
    public CollectorState state() {
        return tally.state(sessions, heard.total(), handOff.waiting(), clock.trouble());
    }

    /** How each session at the broker is, the main one first. */
    public List<SessionState> sessions() {
        return sessions.all().stream()
                .map(s -> new SessionState(
                        s.lane().name(),
                        s.lane().clientId(),
                        s.connector().connected(),
                        handOff.waiting(s.lane().clientId())))
                .toList();
    }

    /** What a person should know of the sessions: gateways that share one against their wish. */
    public List<String> remarks() {
        return lanes.remarks();
    }

    /** The same of a configuration, before anything is started. */
    public static List<String> remarks(String clientId, List<SensorSource> sources) {
        return Lanes.of(clientId, sources).remarks();
    }

    /** How far the clock of each sensor is ahead of the station's (negative: behind), where enough was heard to say. */
    public Map<SensorId, Duration> sensorClocks() {
        return sensorClocks.ahead(clock.clock().instant());
    }

    /** Since when each sensor is offline of which its Sparkplug B edge node, or the broker, said so. */
    public Map<SensorId, Instant> offline() {
        return decoder.offline();
    }

    /** How each Sparkplug B edge node is. */
    public List<NodeState> edgeNodes() {
        return decoder.edgeNodes();
    }

    /** Stops after the batch at hand. The broker keeps the session and what is not acknowledged. */
    @Override
    public void close() {
        committer.stop();
        mover.close();
        sessions.stop();
        if (settings.hearAll()) {
            hearing.stop();
        }
        heard.close();
    }

    private void receive(Session session, Arrival arrival) {
        tally.arrived(arrival.message().arrivedAt());
        if (!clock.credible()) {
            refuse(session, arrival);
            return;
        }
        try {
            boolean patient = arrival.quality() > 0 && tally.storing();
            if (!handOff.offer(arrival, patient ? PATIENCE : Duration.ZERO)) {
                refuse(session, arrival);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            refuse(session, arrival);
        }
    }

    private void refuse(Session session, Arrival arrival) {
        if (arrival.quality() == 0) {
            tally.lost();
        } else {
            session.leave();
        }
    }

    /** Names of metrics come with births only, and births only once, unless they are asked for. */
    private void askForBirths() {
        if (settings.askRebirth() && sessions.connected() && clock.credible()) {
            decoder.rebirthRequests(clock.clock().instant())
                    .forEach(command -> sessions.send(command.topic(), command.bytes()));
        }
    }

    /** Once there is room again and the clock is right, a new connection makes the broker send what was left with it. */
    private void whenIdle() {
        if (tally.storing() && clock.credible()) {
            sessions.all().stream()
                    .filter(s -> handOff.waiting(s.lane().clientId()) == 0)
                    .forEach(Session::fetchLeft);
        }
    }

    private void hear(Arrival arrival) {
        String topic = arrival.message().topic();
        boolean listed = settings.unlisted().stream().noneMatch(filter -> filter.matches(topic));
        if (listed && !decoder.knows(topic)) {
            heard.add(arrival.message());
        }
    }
}
