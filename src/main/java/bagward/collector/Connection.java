package bagward.collector;

import bagward.collector.payload.Message;
import bagward.collector.payload.TopicFilter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One connection to a broker, with a client of its own, never reused. A packet identifier means something on its own
 * connection only; with one client for each, an acknowledgement that comes late cannot hit a message of the next one.
 */
final class Connection implements MqttCallback {
    private static final Logger LOG = LoggerFactory.getLogger(Connection.class);
    private static final Duration ANSWER = Duration.ofSeconds(20);
    /** What was in flight before comes within this time after connecting. */
    private static final Duration RESUMING = Duration.ofSeconds(5);

    private static final Duration FAREWELL = Duration.ofSeconds(1);
    private static final int REFUSED = 0x80;

    private final MqttAsyncClient client;
    private final Plan plan;
    private final Clock clock;
    private final CountDownLatch lost = new CountDownLatch(1);
    private final Instant openedAt;
    private final long openedNanos = System.nanoTime();

    /**
     * What a connection is for.
     *
     * @param clientId name at the broker
     * @param filters what it listens to, once the broker has said whether it kept the session
     * @param quality quality of service that is asked for
     * @param durable whether the broker keeps its session
     * @param receiver takes the messages, on the client's thread
     */
    record Plan(
            String clientId,
            Function<Boolean, List<TopicFilter>> filters,
            int quality,
            boolean durable,
            Consumer<Arrival> receiver) {}

    private Connection(MqttAsyncClient client, Plan plan, Clock clock) {
        this.client = client;
        this.plan = plan;
        this.clock = clock;
        this.openedAt = clock.instant();
    }

    /**
     * Makes the broker forget a lasting session, with what it keeps for it.
     *
     * @throws BrokerException if the broker cannot be reached or refuses
     */
    static void forget(BrokerLink link, String clientId) {
        Plan passing = new Plan(clientId, kept -> List.of(), 0, false, arrival -> {});
        open(link, passing, Clock.systemUTC(), true).close();
    }

    /**
     * Connects.
     *
     * @param subscribeAnew whether to subscribe even where the broker kept the session; it sends retained messages again
     * @throws BrokerException if the broker cannot be reached or refuses; nothing stays open
     */
    static Connection open(BrokerLink link, Plan plan, Clock clock, boolean subscribeAnew) {
        Connection connection = create(link, plan, clock);
        try {
            connection.connect(link.connectOptions(plan.durable()), subscribeAnew);
            return connection;
        } catch (MqttException e) {
            connection.close();
            throw new BrokerException("no connection to the broker at " + link.url() + ": " + reason(e), e);
        } catch (RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private static Connection create(BrokerLink link, Plan plan, Clock clock) {
        try {
            return new Connection(link.client(plan.clientId()), plan, clock);
        } catch (MqttException | IllegalArgumentException e) {
            throw new BrokerException("the broker address " + link.url() + " cannot be used", e);
        }
    }

    private void connect(MqttConnectOptions options, boolean subscribeAnew) throws MqttException {
        // before connecting: messages of a kept session come before any subscribe
        client.setCallback(this);
        client.setManualAcks(true);
        IMqttToken connected = client.connect(options);
        connected.waitForCompletion(ANSWER.toMillis());
        boolean kept = connected.getSessionPresent();
        List<TopicFilter> filters = plan.filters().apply(kept);
        if (subscribeAnew || !kept) {
            ask(filters);
        }
    }

    /**
     * Subscribes to further filters and waits for the answer.
     *
     * @throws BrokerException if the connection is lost, or the broker refuses
     */
    void subscribe(List<TopicFilter> filters) {
        try {
            ask(filters);
        } catch (MqttException e) {
            throw new BrokerException("no subscription at the broker at " + url() + ": " + reason(e), e);
        }
    }

    /**
     * Ends filters and waits for the answer.
     *
     * @throws BrokerException if the connection is lost
     */
    void unsubscribe(List<TopicFilter> filters) {
        try {
            client.unsubscribe(texts(filters)).waitForCompletion(ANSWER.toMillis());
        } catch (MqttException e) {
            throw new BrokerException("no subscription was ended at the broker at " + url() + ": " + reason(e), e);
        }
    }

    private static String[] texts(List<TopicFilter> filters) {
        return filters.stream().map(TopicFilter::text).toArray(String[]::new);
    }

    private void ask(List<TopicFilter> filters) throws MqttException {
        String[] topics = texts(filters);
        if (topics.length == 0) {
            return;
        }
        int[] qualities = new int[topics.length];
        Arrays.fill(qualities, plan.quality());
        IMqttToken subscribed = client.subscribe(topics, qualities);
        subscribed.waitForCompletion(ANSWER.toMillis());
        int[] granted = subscribed.getGrantedQos();
        for (int i = 0; i < topics.length; i++) {
            if (granted[i] >= REFUSED) {
                throw new BrokerException(
                        "the broker at " + url() + " refuses a subscription to '" + topics[i]
                                + "': give its user the right to read it",
                        null);
            }
            if (granted[i] < plan.quality()) {
                LOG.warn(
                        "The broker grants quality {} for '{}': messages can be lost on the way",
                        granted[i],
                        topics[i]);
            }
        }
    }

    private static String reason(MqttException e) {
        Throwable beneath = e.getCause();
        return beneath == null ? String.valueOf(e.getMessage()) : beneath.toString();
    }

    private String url() {
        return client.getServerURI();
    }

    /** Name of the session that it serves. */
    String clientId() {
        return plan.clientId();
    }

    /** How long it stands. */
    Duration age() {
        return Duration.ofNanos(System.nanoTime() - openedNanos);
    }

    /** When it was opened, by the station's clock. */
    Instant openedAt() {
        return openedAt;
    }

    /** Whether the network connection stands. */
    boolean alive() {
        return lost.getCount() > 0 && client.isConnected();
    }

    /** Waits until the connection is lost, or the time is over. */
    void awaitLoss(Duration most) throws InterruptedException {
        lost.await(most.toNanos(), TimeUnit.NANOSECONDS);
    }

    /** Acknowledges a message of this connection; without effect once it is lost, for the broker sends it again then. */
    void acknowledge(Arrival arrival) {
        if (arrival.quality() == 0 || !alive()) {
            return;
        }
        try {
            client.messageArrivedComplete(arrival.id(), arrival.quality());
        } catch (MqttException e) {
            LOG.debug("Not acknowledged, the broker will repeat it: {}", reason(e));
        }
    }

    /** Sends a message at quality 0: it may be lost, and nobody waits for it. */
    void send(String topic, byte[] payload) {
        try {
            client.publish(topic, payload, 0, false);
        } catch (MqttException e) {
            LOG.debug("Not sent to {}: {}", topic, reason(e));
        }
    }

    /** Says that the connection is not wanted any more; whoever holds it closes it. */
    void abandon() {
        lost.countDown();
    }

    /** Ends the connection; a kept session stays with the broker. */
    void close() {
        lost.countDown();
        try {
            if (client.isConnected()) {
                client.disconnect(0).waitForCompletion(FAREWELL.toMillis());
            }
        } catch (MqttException e) {
            LOG.debug("Closing: {}", reason(e));
        }
        try {
            client.close(true);
        } catch (MqttException e) {
            LOG.debug("Closing: {}", reason(e));
        }
    }

    @Override
    public void messageArrived(String topic, MqttMessage message) {
        Message arrived = new Message(topic, message.getPayload(), clock.instant(), message.isRetained());
        boolean resuming = plan.durable() && System.nanoTime() - openedNanos < RESUMING.toNanos();
        boolean perhapsRepeated = message.isDuplicate() || resuming;
        plan.receiver().accept(new Arrival(arrived, message.getId(), message.getQos(), perhapsRepeated, this));
    }

    @Override
    public void connectionLost(Throwable cause) {
        LOG.info("Connection to the broker lost: {}", String.valueOf(cause));
        lost.countDown();
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {
        // what is sent here has quality 0 and no delivery to wait for
    }
}
