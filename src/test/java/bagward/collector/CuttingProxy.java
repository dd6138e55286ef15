package bagward.collector;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** A network between a client and a broker that breaks off after a random number of bytes, so many times. */
final class CuttingProxy implements AutoCloseable {
    private static final int LEAST_BYTES = 40;
    private static final int MOST_BYTES = 1500;

    private final ServerSocket server = new ServerSocket(0, 20, InetAddress.getLoopbackAddress());
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final int brokerPort;
    private final Random random;
    private final AtomicInteger cutsLeft;

    CuttingProxy(int brokerPort, int cuts, long seed) throws IOException {
        this.brokerPort = brokerPort;
        this.random = new Random(seed);
        this.cutsLeft = new AtomicInteger(cuts);
        threads.execute(this::accept);
    }

    int port() {
        return server.getLocalPort();
    }

    int cutsLeft() {
        return cutsLeft.get();
    }

    private void accept() {
        try {
            while (true) {
                Socket client = server.accept();
                Socket broker = new Socket(InetAddress.getLoopbackAddress(), brokerPort);
                int bytes = LEAST_BYTES + random.nextInt(MOST_BYTES);
                threads.execute(() -> pass(client, broker, Integer.MAX_VALUE));
                threads.execute(() -> pass(broker, client, cutsLeft.get() > 0 ? bytes : Integer.MAX_VALUE));
            }
        } catch (IOException closed) {
            threads.shutdown();
        }
    }

    private void pass(Socket from, Socket to, int most) {
        try (from;
                to;
                InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            byte[] buffer = new byte[512];
            int left = most;
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                out.write(buffer, 0, Math.min(n, left));
                out.flush();
                left -= n;
                if (left <= 0) {
                    cutsLeft.decrementAndGet();
                    return;
                }
            }
        } catch (IOException cut) {
            return;
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
        threads.shutdownNow();
    }
}
