package bagward.store.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server of the other tests keeps what it acknowledged when it is killed. */
class InfluxServerTest {
    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void a_point_that_was_acknowledged_is_there_after_a_kill(@TempDir Path folder)
            throws IOException, InterruptedException {
        try (InfluxServer server = InfluxServer.start(folder)) {
            assertEquals(200, post(server, "/query?q=CREATE+DATABASE+d", "").statusCode());
            assertEquals(
                    204,
                    post(server, "/write?db=d&precision=ms", "m value=1.5 1000").statusCode());
            server.kill();
            assertThrows(IOException.class, () -> post(server, "/ping", ""));
            server.startAgain();
            assertTrue(post(server, "/query?db=d&epoch=ms&q=SELECT+value+FROM+m", "")
                    .body()
                    .contains("[1000,1.5]"));
        }
    }

    private HttpResponse<String> post(InfluxServer server, String path, String body)
            throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(server.url() + path))
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }
}
