package bagward.collector;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;

/** A real mosquitto with its own configuration on a free port of 127.0.0.1, stopped by handle. */
public final class Mosquitto implements AutoCloseable {
    private static final Path PROGRAM = Path.of("/usr/sbin/mosquitto");

    private final Path folder;
    private final int port;
    private Process process;

    private Mosquitto(Path folder, int port, Process process) {
        this.folder = folder;
        this.port = port;
        this.process = process;
    }

    /** Starts one that keeps its messages in a folder. */
    public static Mosquitto start(Path folder) throws IOException {
        return start(folder, "");
    }

    /** The same with further lines of configuration. */
    public static Mosquitto start(Path folder, String more) throws IOException {
        return plain(folder, """
                allow_anonymous true
                autosave_on_changes false
                autosave_interval 1
                max_queued_messages 0
                %s
                """.formatted(more));
    }

    /** One that keeps its messages in a folder as Debian's does; all else as those lines say, or by its own defaults. */
    static Mosquitto plain(Path folder, String lines) throws IOException {
        if (!Files.isExecutable(PROGRAM)) {
            throw new IllegalStateException(
                    PROGRAM + " is missing: install the Debian package 'mosquitto' (apt-get install mosquitto)");
        }
        int port = Ports.free();
        String user = System.getProperty("user.name");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("mosquitto.conf"), """
                listener %d 127.0.0.1
                persistence true
                persistence_location %s/
                user %s
                %s
                """.formatted(port, folder.toAbsolutePath(), user, lines));
        return new Mosquitto(folder, port, launch(folder, port));
    }

    private static Process launch(Path folder, int port) throws IOException {
        Process process = new ProcessBuilder(
                        PROGRAM.toString(),
                        "-c",
                        folder.resolve("mosquitto.conf").toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("mosquitto.log").toFile())
                .start();
        Awaitility.await("mosquitto answers on port " + port)
                .atMost(Duration.ofSeconds(10))
                .pollInterval(Duration.ofMillis(50))
                .until(() -> answers(port));
        return process;
    }

    private static boolean answers(int port) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 200);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** Where clients reach it. */
    public BrokerLink link() {
        return new BrokerLink("tcp://127.0.0.1:" + port, Optional.empty(), Optional.empty());
    }

    /** Its port on this machine. */
    public int port() {
        return port;
    }

    /** Kills it; messages since its last save are gone. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Stops it; messages stay on disk. */
    public void stop() {
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Starts it again on the same port and folder. */
    public void startAgain() throws IOException {
        process = launch(folder, port);
    }

    @Override
    public void close() {
        stop();
    }
}
