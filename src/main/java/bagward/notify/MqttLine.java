package bagward.notify;

import bagward.collector.Backoff;
import bagward.collector.BrokerException;
import bagward.collector.BrokerLink;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Our own words at the station's broker: a sign of life at regular times with a last will that the broker speaks when we are
 * gone, and whatever else is published. Connects again by itself.
 */
final class MqttLine implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(MqttLine.class);
    private static final Duration ANSWER = Duration.ofSeconds(10);
    private static final Backoff RECONNECT = new Backoff(Duration.ofMillis(500), Duration.ofSeconds(30));
    private static final int MOST_IN_FLIGHT = 2000;
    private static final String ALIVE = "alive";

    private final BrokerLink link;
    private final String clientId;
    private final DeliverySettings.Mqtt settings;
    private final Clock clock;
    private final Welcome welcome;
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread thread;
    private volatile @Nullable MqttAsyncClient client;

    /** Told each new connection, before anybody else uses it. */
    interface Welcome {
        void connected(MqttAsyncClient client) throws MqttException;
    }

    /**
     * A line that is not connected yet.
     *
     * @param clientId name at the broker, ours alone
     * @param welcome told each new connection
     */
    MqttLine(BrokerLink link, String clientId, DeliverySettings.Mqtt settings, Clock clock, Welcome welcome) {
        this.link = link;
        this.clientId = clientId;
        this.settings = settings;
        this.clock = clock;
        this.welcome = welcome;
        this.thread = new Thread(this::run, "mqtt " + clientId);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** A topic of ours. */
    String topic(String rest) {
        return settings.topic() + "/" + rest;
    }

    /**
     * Publishes at quality 1; when it returns the broker has it.
     *
     * @throws DeliveryException if there is no connection or the broker does not answer in time
     */
    void publish(String topic, byte[] payload, boolean retained) {
        MqttAsyncClient now = client;
        if (now == null) {
            throw DeliveryException.outOfReach("there is no connection to the broker at " + link.url(), null);
        }
        try {
            now.publish(topic, payload, 1, retained).waitForCompletion(ANSWER.toMillis());
        } catch (MqttException e) {
            throw DeliveryException.outOfReach("the broker at " + link.url() + " does not answer: " + e, e);
        }
    }

    /** The connection, if it stands. */
    Optional<MqttAsyncClient> client() {
        return Optional.ofNullable(client).filter(MqttAsyncClient::isConnected);
    }

    private void run() {
        int failures = 0;
        try {
            while (stop.getCount() > 0) {
                if (lived()) {
                    failures = 0;
                } else {
                    failures++;
                    stop.await(RECONNECT.after(failures).toMillis(), TimeUnit.MILLISECONDS);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Connects and gives signs of life until the connection is lost; false if there was none. */
    private boolean lived() throws InterruptedException {
        boolean connected = false;
        MqttAsyncClient opened = null;
        try {
            opened = link.client(clientId);
            opened.connect(options()).waitForCompletion(ANSWER.toMillis());
            connected = true;
            welcome.connected(opened);
            client = opened;
            live(opened);
        } catch (MqttException | BrokerException e) {
            LOG.debug("No connection for signs of life to {}: {}", link.url(), e.getMessage());
        } finally {
            client = null;
            end(opened);
        }
        return connected;
    }

    private void live(MqttAsyncClient opened) throws MqttException, InterruptedException {
        do {
            say(opened, "running");
        } while (!stop.await(settings.every().toMillis(), TimeUnit.MILLISECONDS) && opened.isConnected());
        if (opened.isConnected()) {
            say(opened, "stopped");
        }
    }

    private void say(MqttAsyncClient opened, String state) throws MqttException {
        opened.publish(topic(ALIVE), life(state, clock.instant().toString()), 1, true)
                .waitForCompletion(ANSWER.toMillis());
    }

    private byte[] life(String state, String at) {
        return OutgoingJson.object()
                .put("state", state)
                .put("at", at)
                .put("every-seconds", settings.every().toSeconds())
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private MqttConnectOptions options() {
        MqttConnectOptions options = link.connectOptions(false);
        options.setMaxInflight(MOST_IN_FLIGHT);
        // The broker speaks it when the connection ends without a farewell; the time is that of connecting.
        options.setWill(topic(ALIVE), life("gone", clock.instant().toString()), 1, true);
        return options;
    }

    private static void end(@Nullable MqttAsyncClient opened) {
        if (opened == null) {
            return;
        }
        try {
            if (opened.isConnected()) {
                opened.disconnect(0).waitForCompletion(1000);
            }
        } catch (MqttException e) {
            LOG.debug("Closing: {}", e.getMessage());
        }
        try {
            opened.close(true);
        } catch (MqttException e) {
            LOG.debug("Closing: {}", e.getMessage());
        }
    }

    @Override
    public void close() {
        stop.countDown();
        try {
            thread.join(ANSWER.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
