package bagward.collector;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Ports for tests. */
public final class Ports {
    private Ports() {}

    /** A port of 127.0.0.1 that nobody uses at the moment. */
    public static int free() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
