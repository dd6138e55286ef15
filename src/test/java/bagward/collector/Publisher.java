package bagward.collector;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;

/** A sensor: each message is with the broker when its method returns. */
final class Publisher implements AutoCloseable {
    private static final int MANY = 250;

    private final MqttAsyncClient client;

    Publisher(BrokerLink link) throws MqttException {
        client = link.client("publisher-" + System.nanoTime());
        MqttConnectOptions options = link.connectOptions(false);
        // the library counts a message as in flight for a moment after it has told that it is not
        options.setMaxInflight(1000);
        client.connect(options).waitForCompletion(10_000);
    }

    void publish(String topic, String payload) throws MqttException {
        publish(topic, payload.getBytes(StandardCharsets.UTF_8), false);
    }

    /** Publishes the numbers below a count, many under way at once. */
    void publishNumbers(String topic, int count) throws MqttException {
        List<IMqttToken> underWay = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            byte[] number = Integer.toString(i).getBytes(StandardCharsets.UTF_8);
            underWay.add(client.publish(topic, number, 1, false));
            if (underWay.size() == MANY || i == count - 1) {
                for (IMqttToken token : underWay) {
                    token.waitForCompletion(10_000);
                }
                underWay.clear();
            }
        }
    }

    void retain(String topic, String payload) throws MqttException {
        publish(topic, payload.getBytes(StandardCharsets.UTF_8), true);
    }

    void publish(String topic, byte[] payload, boolean retained) throws MqttException {
        client.publish(topic, payload, 1, retained).waitForCompletion(10_000);
    }

    @Override
    public void close() throws MqttException {
        try {
            if (client.isConnected()) {
                client.disconnect(0).waitForCompletion(1000);
            }
        } finally {
            client.close(true);
        }
    }
}
