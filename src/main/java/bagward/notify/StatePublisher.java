package bagward.notify;

import bagward.board.Board;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the retained topics at the broker equal to the newest board: changes are published, topics that are over are
 * cleared with an empty message, also those that an earlier run left behind.
 */
final class StatePublisher implements MqttLine.Welcome {
    private static final Logger LOG = LoggerFactory.getLogger(StatePublisher.class);
    private static final byte[] NOTHING = {};

    private final String prefix;
    private final SortedMap<String, String> wanted = new TreeMap<>();
    private final SortedMap<String, String> there = new TreeMap<>();
    private boolean shown;

    /** @param prefix what all topics begin with */
    StatePublisher(String prefix) {
        this.prefix = prefix + "/";
    }

    /** Takes a board, and publishes what it changes if there is a connection. */
    synchronized void show(Board board, MqttLine line) {
        wanted.clear();
        StateTopics.of(board).forEach((topic, json) -> wanted.put(prefix + topic, json));
        shown = true;
        line.client().ifPresent(this::publishChanges);
    }

    @Override
    public void connected(MqttAsyncClient client) throws MqttException {
        synchronized (this) {
            there.clear();
        }
        // What an earlier run left behind comes back as retained messages.
        for (String filter : new String[] {prefix + "alarm/#", prefix + "house/#"}) {
            client.subscribe(filter, 1, (topic, message) -> {
                if (message.isRetained()) {
                    leftBehind(topic, new String(message.getPayload(), StandardCharsets.UTF_8));
                }
            });
        }
    }

    private synchronized void leftBehind(String topic, String json) {
        if (!json.isEmpty()) {
            there.putIfAbsent(topic, json);
        }
    }

    private void publishChanges(MqttAsyncClient client) {
        if (!shown) {
            return;
        }
        try {
            for (Map.Entry<String, String> entry : wanted.entrySet()) {
                if (!entry.getValue().equals(there.get(entry.getKey()))) {
                    client.publish(entry.getKey(), entry.getValue().getBytes(StandardCharsets.UTF_8), 1, true);
                    there.put(entry.getKey(), entry.getValue());
                }
            }
            for (String topic : there.keySet().toArray(String[]::new)) {
                if (!wanted.containsKey(topic)) {
                    client.publish(topic, NOTHING, 1, true);
                    there.remove(topic);
                }
            }
        } catch (MqttException e) {
            LOG.debug("The rest is published with the next board: {}", e.getMessage());
        }
    }
}
