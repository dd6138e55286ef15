package bagward.store.influx;

import bagward.collector.Ports;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;

/** A real influxd with its own configuration and folder on a free port of 127.0.0.1, stopped by handle. */
public final class InfluxServer implements AutoCloseable {
    private static final Path PROGRAM = Path.of("/usr/bin/influxd");

    private final Path folder;
    private final int port;
    private final String scheme;
    private Process process;

    private InfluxServer(Path folder, int port, String scheme, Process process) {
        this.folder = folder;
        this.port = port;
        this.scheme = scheme;
        this.process = process;
    }

    /** Starts one without users that keeps its data in a folder. */
    public static InfluxServer start(Path folder) throws IOException {
        return start(folder, "http", "");
    }

    /** Starts one that asks for a user; the first user may be made by anybody. */
    public static InfluxServer startWithUsers(Path folder) throws IOException {
        return start(folder, "http", "auth-enabled = true");
    }

    /** Starts one that speaks TLS with a certificate and its key, both PEM. */
    public static InfluxServer startWithTls(Path folder, Path certificate, Path key) throws IOException {
        return start(folder, "https", """
                https-enabled = true
                https-certificate = "%s"
                https-private-key = "%s"
                """.formatted(certificate.toAbsolutePath(), key.toAbsolutePath()));
    }

    private static InfluxServer start(Path folder, String scheme, String more) throws IOException {
        if (!Files.isExecutable(PROGRAM)) {
            throw new IllegalStateException(
                    PROGRAM + " is missing: install the Debian package 'influxdb' (apt-get install influxdb)");
        }
        int port = Ports.free();
        Files.createDirectories(folder);
        Files.writeString(
                folder.resolve("influxd.conf"), """
                reporting-disabled = true
                bind-address = "127.0.0.1:%d"
                [meta]
                dir = "%2$s/meta"
                [data]
                dir = "%2$s/data"
                wal-dir = "%2$s/wal"
                query-log-enabled = false
                [monitor]
                store-enabled = false
                [http]
                bind-address = "127.0.0.1:%3$d"
                log-enabled = false
                %4$s
                """.formatted(Ports.free(), folder.toAbsolutePath(), port, more));
        return new InfluxServer(folder, port, scheme, launch(folder, port));
    }

    private static Process launch(Path folder, int port) throws IOException {
        Process process = new ProcessBuilder(
                        PROGRAM.toString(),
                        "-config",
                        folder.resolve("influxd.conf").toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        folder.resolve("influxd.log").toFile()))
                .start();
        Awaitility.await("influxd answers on port " + port + ", see " + folder.resolve("influxd.log"))
                .atMost(Duration.ofSeconds(60))
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

    /** Where clients reach it: http or https, 127.0.0.1, its port. */
    public String url() {
        return scheme + "://127.0.0.1:" + port;
    }

    /** The folder with its data. */
    public Path folder() {
        return folder;
    }

    /** Stops it in good order; its data stay on disk. */
    public void stop() {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                kill();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Kills it (signal 9) wherever it is. */
    public void kill() {
        process.destroyForcibly();
        try {
            process.waitFor();
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
