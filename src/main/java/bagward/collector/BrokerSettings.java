package bagward.collector;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Optional;

/** Which broker is used. */
public sealed interface BrokerSettings {
    /** Where clients reach it. */
    BrokerLink link();

    /** What tells this broker from others for as long as its sessions last: its host, however it is reached there. */
    String name();

    /** Messages that the broker sends before it waits for acknowledgements; a batch is never larger. */
    int window();

    /**
     * The broker inside this program.
     *
     * @param folder where it keeps messages over a restart
     * @param host address to listen on; 127.0.0.1 for this machine only
     * @param port TCP port
     * @param credentials what clients must know; required unless the host is this machine only
     */
    record Embedded(Path folder, String host, int port, Optional<Credentials> credentials) implements BrokerSettings {
        /**
         * Messages in flight to one client: the most that there can be. Artemis does not go on with a topic whose message
         * met the bound until the next one of that topic comes, so a live reading behind a backlog would stay where it is.
         */
        static final int WINDOW = 65_535;

        /** This machine only, on the usual port, without a password. */
        public static Embedded onThisMachine(Path folder, int port) {
            return new Embedded(folder, "127.0.0.1", port, Optional.empty());
        }

        @Override
        public BrokerLink link() {
            String reached = host.equals("0.0.0.0") || host.equals("::") ? "127.0.0.1" : host;
            String bracketed = reached.indexOf(':') >= 0 ? "[" + reached + "]" : reached;
            return new BrokerLink("tcp://" + bracketed + ":" + port, credentials, Optional.empty());
        }

        @Override
        public String name() {
            return "embedded";
        }

        @Override
        public int window() {
            return WINDOW;
        }

        /** Whether a host name stands for this machine only. */
        public static boolean isLoopback(String host) {
            try {
                return InetAddress.getByName(host).isLoopbackAddress();
            } catch (UnknownHostException e) {
                return false;
            }
        }
    }

    /**
     * A broker that somebody else runs.
     *
     * @param link where it is
     * @param window messages that it sends before it waits for acknowledgements (20 with mosquitto unless configured)
     */
    record External(BrokerLink link, int window) implements BrokerSettings {
        @Override
        public String name() {
            return String.valueOf(URI.create(link.url()).getHost());
        }
    }
}
