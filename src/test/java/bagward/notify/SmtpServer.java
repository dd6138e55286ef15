package bagward.notify;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import org.jspecify.annotations.Nullable;

/** A small SMTP server (RFC 5321) on a free port that behaves, connection by connection, as a script says. */
final class SmtpServer implements AutoCloseable {
    /** What a connection meets. */
    enum Mood {
        /** Mail is taken. */
        TAKES,
        /** The recipient is unknown: 550. */
        REFUSES,
        /** Not now: 451 to the mail. */
        BUSY,
        /** No word is said. */
        HANGS,
        /** The connection ends after the mail was taken, before it is said. */
        DROPS
    }

    private final ServerSocket listening;
    private final Thread accepting;
    private final AtomicInteger connections = new AtomicInteger();
    private final AtomicInteger broken = new AtomicInteger();
    private final List<String> taken = new CopyOnWriteArrayList<>();
    private final List<Socket> open = new CopyOnWriteArrayList<>();
    private final @Nullable SSLContext tls;
    private volatile IntFunction<Mood> script = number -> Mood.TAKES;

    /** @param tls for STARTTLS; null for none */
    SmtpServer(@Nullable SSLContext tls) throws IOException {
        this.tls = tls;
        this.listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        this.accepting = thread(this::accept);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "smtp-server");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    int port() {
        return listening.getLocalPort();
    }

    /** @param moods the mood of the n-th connection from now on, from 1 */
    void script(IntFunction<Mood> moods) {
        connections.set(0);
        script = moods;
    }

    /** Connections that the client ended in the middle. */
    int broken() {
        return broken.get();
    }

    /** Mail that was taken, headers and body. */
    List<String> taken() {
        return taken;
    }

    private void accept() {
        try {
            while (!listening.isClosed()) {
                Socket socket = listening.accept();
                open.add(socket);
                Mood mood = script.apply(connections.incrementAndGet());
                thread(() -> talk(socket, mood));
            }
        } catch (IOException e) {
            broken.incrementAndGet();
        }
    }

    private void talk(Socket socket, Mood mood) {
        if (mood == Mood.HANGS) {
            return;
        }
        try (socket) {
            new Talk(socket, mood).run();
        } catch (IOException e) {
            broken.incrementAndGet();
        }
    }

    @Override
    public void close() {
        stop();
    }

    /** Answers no more; connections that come after this are refused. */
    void stop() {
        try {
            listening.close();
            accepting.join();
            for (Socket socket : open) {
                socket.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private final class Talk {
        private final Mood mood;
        private Socket socket;
        private BufferedReader in;
        private boolean secured;

        Talk(Socket socket, Mood mood) throws IOException {
            this.socket = socket;
            this.mood = mood;
            this.in = reader(socket);
        }

        private static BufferedReader reader(Socket socket) throws IOException {
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
        }

        private void say(String line) throws IOException {
            socket.getOutputStream().write((line + "\r\n").getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
        }

        void run() throws IOException {
            say("220 test");
            for (String line = in.readLine(); line != null && !line.startsWith("QUIT"); line = in.readLine()) {
                if (line.startsWith("EHLO")) {
                    say(tls != null && !secured ? "250-test\r\n250 STARTTLS" : "250 test");
                } else if (line.startsWith("STARTTLS")) {
                    secure();
                } else if (line.startsWith("RCPT") && mood == Mood.REFUSES) {
                    say("550 5.1.1 unknown here");
                } else if (line.startsWith("MAIL") && mood == Mood.BUSY) {
                    say("451 4.3.2 not now");
                } else if (line.startsWith("DATA")) {
                    say("354 go on");
                    taken.add(data());
                    if (mood == Mood.DROPS) {
                        return;
                    }
                    say("250 taken");
                } else {
                    say("250 ok");
                }
            }
        }

        private void secure() throws IOException {
            say("220 go on");
            SSLSocket layered = (SSLSocket) java.util.Objects.requireNonNull(tls)
                    .getSocketFactory()
                    .createSocket(socket, null, socket.getPort(), true);
            layered.setUseClientMode(false);
            socket = layered;
            in = reader(layered);
            secured = true;
        }

        private String data() throws IOException {
            StringBuilder mail = new StringBuilder();
            String line = in.readLine();
            while (line != null && !line.equals(".")) {
                mail.append(line.startsWith("..") ? line.substring(1) : line).append('\n');
                line = in.readLine();
            }
            if (line == null) {
                throw new IOException("the client ended in the middle of the mail");
            }
            return mail.toString();
        }
    }
}
