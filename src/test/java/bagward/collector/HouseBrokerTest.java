package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real mosquitto set up with {@code deploy/mosquitto.conf}, only its port and the file of its users moved. */
class HouseBrokerTest {
    private static final Path PASSWORDS = Path.of("/usr/bin/mosquitto_passwd");
    private static final int MESSAGES = 1500;

    private final Path folder;
    private final Path users;

    HouseBrokerTest(@TempDir Path folder) throws Exception {
        this.folder = folder;
        this.users = folder.resolve("users");
        Files.createFile(users);
        Process made = new ProcessBuilder(PASSWORDS.toString(), "-b", users.toString(), "bagward", "hazel")
                .redirectErrorStream(true)
                .start();
        assertTrue(made.waitFor(10, TimeUnit.SECONDS) && made.exitValue() == 0, "mosquitto_passwd failed");
    }

    @Test
    void keeps_all_that_comes_while_nobody_listens_over_a_restart() throws Exception {
        assertEquals(MESSAGES, keptOverRestart(lines()));
    }

    @Test
    void would_drop_messages_without_a_word_if_its_queue_had_the_usual_bound() throws Exception {
        int kept = keptOverRestart(without(lines(), "max_queued_messages 0"));

        assertTrue(kept < MESSAGES, kept + " kept");
    }

    @Test
    void lets_nobody_in_without_a_password() throws Exception {
        try (Mosquitto mosquitto = Mosquitto.plain(folder, lines())) {
            BrokerLink nameless = mosquitto.link();
            assertThrows(MqttException.class, () -> new Publisher(nameless).close());

            new Publisher(known(mosquitto)).close();
        }
    }

    private int keptOverRestart(String lines) throws Exception {
        try (Mosquitto mosquitto = Mosquitto.plain(folder, lines)) {
            BrokerLink link = known(mosquitto);
            listen(link, ConcurrentHashMap.newKeySet());
            try (Publisher sensor = new Publisher(link)) {
                sensor.publishNumbers("t/sensor", MESSAGES);
            }
            mosquitto.stop();
            mosquitto.startAgain();
            Set<String> heard = ConcurrentHashMap.newKeySet();
            listen(link, heard);
            return heard.size();
        }
    }

    /** Listens as Bagward does, under one name, until nothing more comes. */
    private static void listen(BrokerLink link, Set<String> heard) throws MqttException {
        MqttAsyncClient client = link.client("bagward");
        try {
            client.setCallback(new Ear(heard));
            client.connect(link.connectOptions(true)).waitForCompletion(10_000);
            client.subscribe("t/#", 1).waitForCompletion(10_000);
            int[] before = {-1};
            Awaitility.await("nothing more comes")
                    .pollDelay(Duration.ofMillis(300))
                    .pollInterval(Duration.ofMillis(300))
                    .until(() -> before[0] == (before[0] = heard.size()));
            client.disconnect().waitForCompletion(10_000);
        } finally {
            client.close(true);
        }
    }

    /** Set before connecting: what waited comes before any answer to a subscription. */
    private record Ear(Set<String> heard) implements MqttCallback {
        @Override
        public void messageArrived(String topic, MqttMessage message) {
            heard.add(new String(message.getPayload(), StandardCharsets.UTF_8));
        }

        @Override
        public void connectionLost(Throwable cause) {
            // the test counts what came
        }

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {
            // nothing is sent
        }
    }

    private static BrokerLink known(Mosquitto mosquitto) {
        return new BrokerLink(
                mosquitto.link().url(), Optional.of(new Credentials("bagward", "hazel")), Optional.empty());
    }

    private String lines() throws IOException {
        String house = Files.readString(Path.of("deploy/mosquitto.conf"));
        String moved = house.replace("/etc/mosquitto/bagward.users", users.toString());
        assertTrue(moved.contains("password_file " + users), "the file names no users");
        return without(moved, "listener 1883");
    }

    private static String without(String lines, String line) {
        assertTrue(lines.lines().anyMatch(line::equals), "no line: " + line);
        return lines.replace(line + "\n", "");
    }
}
