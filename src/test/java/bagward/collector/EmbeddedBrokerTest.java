package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddedBrokerTest {
    private final Path folder;

    EmbeddedBrokerTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void without_a_password_it_does_not_listen_to_the_network() {
        BrokerSettings.Embedded open = new BrokerSettings.Embedded(folder, "0.0.0.0", 1883, Optional.empty());
        assertTrue(assertThrows(ImpossibleValueException.class, () -> EmbeddedBroker.start(open))
                .getMessage()
                .contains("set user and password"));
    }

    @Test
    void with_a_password_only_those_who_know_it_get_in() throws Exception {
        int port = Ports.free();
        Credentials right = new Credentials("station", "alder-7");
        BrokerSettings.Embedded settings = new BrokerSettings.Embedded(folder, "0.0.0.0", port, Optional.of(right));
        try (EmbeddedBroker broker = EmbeddedBroker.start(settings);
                Publisher publisher = new Publisher(broker.link())) {
            publisher.publish("house/air", "1");
            for (Optional<Credentials> wrong : java.util.List.of(
                    Optional.<Credentials>empty(), Optional.of(new Credentials("station", "alder-8")))) {
                BrokerLink link = new BrokerLink(broker.link().url(), wrong, Optional.empty());
                assertThrows(MqttException.class, () -> new Publisher(link).close());
            }
        }
    }

    @Test
    void a_taken_port_is_said_and_leaves_nothing_running() throws Exception {
        try (ServerSocket taken = new ServerSocket(0)) {
            BrokerSettings.Embedded settings = BrokerSettings.Embedded.onThisMachine(folder, taken.getLocalPort());
            BrokerException refused = assertThrows(BrokerException.class, () -> EmbeddedBroker.start(settings));
            assertTrue(String.valueOf(refused.getMessage()).contains("check that nothing else uses the port"));
        }
    }

    @Test
    void a_password_is_never_shown() {
        assertEquals("station (password not shown)", new Credentials("station", "alder-7").toString());
    }
}
