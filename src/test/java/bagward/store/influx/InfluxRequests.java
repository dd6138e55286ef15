package bagward.store.influx;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/** Plain requests to a server, as another program would send them. */
final class InfluxRequests {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final String url;
    private final Optional<String> login;

    private InfluxRequests(String url, Optional<String> login) {
        this.url = url;
        this.login = login;
    }

    /** Requests of nobody in particular. */
    static InfluxRequests to(InfluxServer server) {
        return new InfluxRequests(server.url(), Optional.empty());
    }

    /** The same of a user. */
    InfluxRequests as(String user, String password) {
        return new InfluxRequests(url, Optional.of(user + ":" + password));
    }

    /** The answer to a statement, times in ms. */
    HttpResponse<String> ask(String database, String statement) {
        return post("/query?epoch=ms&db=" + encode(database) + "&q=" + encode(statement), "");
    }

    /** The answer to lines, times in ms. */
    HttpResponse<String> write(String database, String lines) {
        return post("/write?precision=ms&db=" + encode(database), lines);
    }

    private HttpResponse<String> post(String path, String body) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(url + path)).POST(BodyPublishers.ofString(body));
        login.ifPresent(l -> request.header(
                "Authorization", "Basic " + Base64.getEncoder().encodeToString(l.getBytes(StandardCharsets.UTF_8))));
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
