package bagward.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/** Publishes batches of messages at QoS 1 and returns when the broker has taken every one. */
final class BatchSender implements AutoCloseable {
    /** Largest batch, and so the largest number of messages in flight. */
    static final int LARGEST = 500;

    private static final long WAIT_MILLIS = 30_000;

    private final MqttAsyncClient client;
    private final MqttConnectOptions options;

    BatchSender(DemoBroker broker) throws MqttException {
        client = new MqttAsyncClient(
                broker.url(), "demo-" + UUID.randomUUID().toString().substring(0, 8), new MemoryPersistence());
        options = new MqttConnectOptions();
        options.setCleanSession(true);
        options.setMaxInflight(2 * LARGEST);
        broker.user().ifPresent(options::setUserName);
        broker.password().ifPresent(password -> options.setPassword(password.toCharArray()));
    }

    /**
     * Sends one batch, connecting first if need be.
     *
     * @throws MqttException if any message was not taken; the whole batch may then be sent again, since readings are
     *     identified by series and time
     */
    void send(List<DemoMessage> batch) throws MqttException {
        if (!client.isConnected()) {
            client.connect(options).waitForCompletion(WAIT_MILLIS);
        }
        List<IMqttDeliveryToken> tokens = new ArrayList<>();
        for (DemoMessage message : batch) {
            MqttMessage mqtt = new MqttMessage(message.bytes());
            mqtt.setQos(1);
            tokens.add(client.publish(message.topic(), mqtt));
        }
        for (IMqttDeliveryToken token : tokens) {
            token.waitForCompletion(WAIT_MILLIS);
        }
    }

    @Override
    public void close() throws MqttException {
        try {
            if (client.isConnected()) {
                client.disconnectForcibly(500, 500);
            }
        } finally {
            client.close(true);
        }
    }
}
