package bagward.collector;

import java.io.IOException;
import java.nio.file.Path;

/** The brokers that the collector must work with, behind one face so that each test runs on both. */
interface TestBroker extends AutoCloseable {
    BrokerSettings settings();

    void stop();

    void startAgain() throws IOException;

    @Override
    void close();

    /** Which. */
    enum Kind {
        EMBEDDED,
        MOSQUITTO;

        TestBroker start(Path folder) throws IOException {
            return this == EMBEDDED ? embedded(folder) : mosquitto(folder);
        }
    }

    private static TestBroker mosquitto(Path folder) throws IOException {
        Mosquitto broker = Mosquitto.start(folder);
        return new TestBroker() {
            @Override
            public BrokerSettings settings() {
                return new BrokerSettings.External(broker.link(), 20);
            }

            @Override
            public void stop() {
                broker.stop();
            }

            @Override
            public void startAgain() throws IOException {
                broker.startAgain();
            }

            @Override
            public void close() {
                broker.close();
            }
        };
    }

    private static TestBroker embedded(Path folder) throws IOException {
        BrokerSettings.Embedded settings = BrokerSettings.Embedded.onThisMachine(folder, Ports.free());
        return new TestBroker() {
            private EmbeddedBroker broker = EmbeddedBroker.start(settings);

            @Override
            public BrokerSettings settings() {
                return settings;
            }

            @Override
            public void stop() {
                broker.close();
            }

            @Override
            public void startAgain() {
                broker = EmbeddedBroker.start(settings);
            }

            @Override
            public void close() {
                broker.close();
            }
        };
    }
}
