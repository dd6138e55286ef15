package bagward.demo;

import bagward.collector.BrokerLink;
import java.util.List;
import java.util.UUID;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;

/** Publishes batches of messages at QoS 1 and returns when the broker has taken every one. */
final class BatchSender implements AutoCloseable {
    /** Largest batch, and so the largest number of messages in flight. */
    static final int LARGEST = 500;

    private static final long WAIT_MILLIS = 30_000;
    private static final long GOODBYE_MILLIS = 500;

    private final MqttAsyncClient client;
    private final MqttConnectOptions options;

    BatchSender(BrokerLink broker) throws MqttException {
        client = broker.client("demo-" + UUID.randomUUID().toString().substring(0, 8));
        options = broker.connectOptions(false);
        options.setMaxInflight(2 * LARGEST);
    }

    /**
     * Sends one batch, connecting first if need be.
     *
     * @throws MqttException if any message was not taken; the whole batch may then be sent again, since readings are
     *     identified by series and time
     */
    void send(List<DemoMessage> batch) throws MqttException, InterruptedException {
        try {
            sendAndWait(batch);
        } catch (MqttException e) {
            drop();
            throw e;
        }
    }

    private void sendAndWait(List<DemoMessage> batch) throws MqttException, InterruptedException {
        if (!client.isConnected()) {
            client.connect(options).waitForCompletion(WAIT_MILLIS);
        }
        BatchOutcome outcome = new BatchOutcome(batch.size());
        for (DemoMessage message : batch) {
            client.publish(message.topic(), message.bytes(), 1, false, null, outcome);
        }
        outcome.await(WAIT_MILLIS);
    }

    /** Forgets what is in flight, or it would count against the next attempt. */
    private void drop() throws MqttException {
        if (client.isConnected()) {
            client.disconnectForcibly(0, GOODBYE_MILLIS);
        }
    }

    @Override
    public void close() throws MqttException {
        try {
            drop();
        } finally {
            client.close(true);
        }
    }
}
