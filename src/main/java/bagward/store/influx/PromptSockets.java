package bagward.store.influx;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import javax.net.SocketFactory;

/**
 * Sockets that send small pieces at once. Without this, the last piece of each request waits until the server has
 * acknowledged the one before, which it puts off by some 40 ms.
 */
final class PromptSockets extends SocketFactory {
    private final SocketFactory usual = SocketFactory.getDefault();

    @Override
    public Socket createSocket() throws IOException {
        return prompt(usual.createSocket());
    }

    @Override
    public Socket createSocket(String host, int port) throws IOException {
        return prompt(usual.createSocket(host, port));
    }

    @Override
    public Socket createSocket(String host, int port, InetAddress local, int localPort) throws IOException {
        return prompt(usual.createSocket(host, port, local, localPort));
    }

    @Override
    public Socket createSocket(InetAddress host, int port) throws IOException {
        return prompt(usual.createSocket(host, port));
    }

    @Override
    public Socket createSocket(InetAddress host, int port, InetAddress local, int localPort) throws IOException {
        return prompt(usual.createSocket(host, port, local, localPort));
    }

    private static Socket prompt(Socket socket) throws IOException {
        socket.setTcpNoDelay(true);
        return socket;
    }
}
