package bagward.site;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/** Somebody who opens pages and sends forms, as a browser would. */
final class Visitor {
    private final HttpClient client = HttpClient.newHttpClient();
    private final String origin;

    Visitor(int port) {
        this.origin = "http://127.0.0.1:" + port;
    }

    String origin() {
        return origin;
    }

    HttpResponse<String> get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.build());
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        return post(path, fields, "Origin", origin);
    }

    HttpResponse<String> post(String path, Map<String, String> fields, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path))
                .header("Content-Type", "application/x-www-form-urlencoded");
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.POST(BodyPublishers.ofString(encoded(fields))).build());
    }

    HttpResponse<String> postText(String path, String body, String... headers) {
        return send(HttpRequest.newBuilder(URI.create(origin + path))
                .headers(headers)
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String encoded(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
