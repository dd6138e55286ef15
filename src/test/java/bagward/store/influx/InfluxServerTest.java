package bagward.store.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server of the other tests keeps what it acknowledged when it is killed. */
class InfluxServerTest {
    @Test
    void a_point_that_was_acknowledged_is_there_after_a_kill(@TempDir Path folder) throws IOException {
        try (InfluxServer server = InfluxServer.start(folder)) {
            InfluxRequests requests = InfluxRequests.to(server);
            assertEquals(200, requests.ask("d", "CREATE DATABASE d").statusCode());
            assertEquals(204, requests.write("d", "m value=1.5 1000").statusCode());
            server.kill();
            assertThrows(UncheckedIOException.class, () -> requests.ask("d", "SELECT value FROM m"));
            server.startAgain();
            assertTrue(requests.ask("d", "SELECT value FROM m").body().contains("[1000,1.5]"));
        }
    }
}
