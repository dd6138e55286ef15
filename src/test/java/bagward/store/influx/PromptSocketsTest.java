package bagward.store.influx;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import org.junit.jupiter.api.Test;

class PromptSocketsTest {
    private final PromptSockets sockets = new PromptSockets();

    @Test
    void every_socket_sends_small_pieces_at_once() throws IOException {
        InetAddress here = InetAddress.getLoopbackAddress();
        try (ServerSocket server = new ServerSocket(0, 5, here);
                Socket loose = sockets.createSocket();
                Socket byName = sockets.createSocket(here.getHostAddress(), server.getLocalPort());
                Socket byAddress = sockets.createSocket(here, server.getLocalPort());
                Socket fromHere = sockets.createSocket(here, server.getLocalPort(), here, 0);
                Socket namedFromHere = sockets.createSocket(here.getHostAddress(), server.getLocalPort(), here, 0)) {
            for (Socket socket : new Socket[] {loose, byName, byAddress, fromHere, namedFromHere}) {
                assertTrue(socket.getTcpNoDelay());
            }
        }
    }
}
