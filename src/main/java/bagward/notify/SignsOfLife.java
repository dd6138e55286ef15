package bagward.notify;

import bagward.board.Board;
import bagward.collector.BrokerLink;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What tells others that the watch lives and how the alarms stand: signs of life and states at the broker, and the ping. */
public final class SignsOfLife implements AutoCloseable {
    private static final String CLIENT_ID = "-deliveries";

    private final Optional<StatePublisher> states;
    private final Optional<MqttLine> line;
    private final Optional<PingCaller> ping;
    private final DeliverySettings settings;

    /**
     * Nothing is started yet.
     *
     * @param settings what is configured
     * @param link the station's broker
     * @param collectorId name of the collector at the broker, of which ours is made
     * @param clock the station's clock
     * @param well whether all is well
     */
    public SignsOfLife(
            DeliverySettings settings, BrokerLink link, String collectorId, Clock clock, BooleanSupplier well) {
        this.settings = settings;
        this.states = settings.mqtt().map(mqtt -> new StatePublisher(mqtt.topic()));
        this.line = settings.mqtt()
                .map(mqtt -> new MqttLine(link, collectorId + CLIENT_ID, mqtt, clock, states.orElseThrow()));
        this.ping = settings.ping().map(configured -> new PingCaller(configured, well));
    }

    /** Starts. */
    public void start() {
        line.ifPresent(MqttLine::start);
        ping.ifPresent(PingCaller::start);
    }

    /** Shows a board at the broker. */
    public void show(Board board) {
        line.ifPresent(mqtt -> states.orElseThrow().show(board, mqtt));
    }

    /** The channels of the configuration; those of the broker speak over the same connection. */
    public List<Channel> channels() {
        return Channels.of(settings, line);
    }

    /** One sentence for each sign; empty if none is configured. */
    List<String> says() {
        List<String> says = new ArrayList<>();
        line.ifPresent(mqtt -> says.add("Sign of life on " + mqtt.topic("alive") + " every "
                + seconds(settings.mqtt().orElseThrow().every()) + ": "
                + (mqtt.client().isPresent() ? "connected." : "not connected; it is tried again.")));
        ping.ifPresent(caller -> says.add("Ping every "
                + seconds(settings.ping().orElseThrow().every()) + " while all is well: "
                + caller.trouble().orElse("the last call went well or none was made yet") + "."));
        return says;
    }

    private static String seconds(Duration duration) {
        return duration.toSeconds() + " s";
    }

    @Override
    public void close() {
        ping.ifPresent(PingCaller::close);
        line.ifPresent(MqttLine::close);
    }
}
