package bagward.store.influx;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** Stands between a store and a server, passes requests on, and fails at the nth of them as it is told. */
final class Relay implements AutoCloseable {
    /** How a request fails. */
    enum Failure {
        /** The server never hears of it. */
        NOT_PASSED_ON,
        /** The server does it, but its answer is lost. */
        ANSWER_LOST,
        /** The server says that it cannot. */
        UNAVAILABLE
    }

    private final HttpClient client = HttpClient.newHttpClient();
    private final InfluxServer server;
    private final HttpServer listening;
    private Failure failure = Failure.UNAVAILABLE;
    private boolean fromThenOn;
    private int left;

    private Relay(InfluxServer server, HttpServer listening) {
        this.server = server;
        this.listening = listening;
    }

    static Relay before(InfluxServer server) throws IOException {
        HttpServer listening = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        Relay relay = new Relay(server, listening);
        listening.createContext("/", relay::take);
        listening.start();
        return relay;
    }

    String url() {
        return "http://127.0.0.1:" + listening.getAddress().getPort();
    }

    /** Fails at the nth request from now, once or from then on. */
    synchronized void failAt(int n, Failure how, boolean always) {
        left = n;
        failure = how;
        fromThenOn = always;
    }

    /** Passes everything on again. */
    synchronized void heal() {
        left = Integer.MAX_VALUE;
    }

    /** Whether the nth request has come. */
    synchronized boolean struck() {
        return left <= 0;
    }

    private synchronized boolean strikes() {
        left--;
        return left == 0 || (fromThenOn && left < 0);
    }

    private void take(HttpExchange exchange) throws IOException {
        try (exchange) {
            byte[] body = exchange.getRequestBody().readAllBytes();
            boolean fails = strikes();
            if (fails && failure == Failure.NOT_PASSED_ON) {
                return;
            }
            if (fails && failure == Failure.UNAVAILABLE) {
                exchange.sendResponseHeaders(503, -1);
                return;
            }
            HttpResponse<byte[]> answer = passOn(exchange, body);
            if (!fails) {
                exchange.sendResponseHeaders(
                        answer.statusCode(), answer.body().length == 0 ? -1 : answer.body().length);
                exchange.getResponseBody().write(answer.body());
            }
        }
    }

    private HttpResponse<byte[]> passOn(HttpExchange exchange, byte[] body) throws IOException {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                        URI.create(server.url() + exchange.getRequestURI().toString()))
                .POST(BodyPublishers.ofByteArray(body));
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type != null) {
            request.header("Content-Type", type);
        }
        try {
            return client.send(request.build(), BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    @Override
    public void close() {
        listening.stop(0);
    }
}
