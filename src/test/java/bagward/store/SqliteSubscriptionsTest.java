package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteSubscriptionsTest {
    private static final String BROKER = "tcp://broker:1883";

    private final Path file;

    SqliteSubscriptionsTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    @Test
    void what_each_client_asked_for_is_known_after_a_restart() {
        try (SqliteStores stores = open()) {
            stores.subscriptions().hold(BROKER, "bagward", List.of("a/1", "a/#"));
            stores.subscriptions().hold(BROKER, "bagward", List.of("a/1", "b"));
            stores.subscriptions().hold(BROKER, "bagward-1", List.of());
            stores.subscriptions().hold("embedded", "bagward", List.of("c"));
        }
        try (SqliteStores stores = open()) {
            assertEquals(
                    Map.of("bagward", Set.of("a/1", "a/#", "b"), "bagward-1", Set.of()),
                    stores.subscriptions().held(BROKER));
        }
    }

    @Test
    void filters_are_forgotten_one_by_one_and_the_session_only_when_it_ends() {
        try (SqliteStores stores = open()) {
            SubscriptionStore subscriptions = stores.subscriptions();
            subscriptions.hold(BROKER, "bagward", List.of("a", "b"));
            subscriptions.hold("embedded", "bagward", List.of("a"));
            subscriptions.letGo(BROKER, "bagward", List.of("a", "unknown"));
            assertEquals(Map.of("bagward", Set.of("b")), subscriptions.held(BROKER));
            subscriptions.letGo(BROKER, "bagward", List.of("b"));
            assertEquals(Map.of("bagward", Set.of()), subscriptions.held(BROKER));
            subscriptions.hold(BROKER, "bagward", List.of("c"));
            subscriptions.end(BROKER, "bagward");
            subscriptions.end(BROKER, "unknown");
            assertEquals(Map.of(), subscriptions.held(BROKER));
            assertEquals(Map.of("bagward", Set.of("a")), subscriptions.held("embedded"));
        }
    }

    private SqliteStores open() {
        return SqliteStores.open(file, Samples.CLOCK);
    }
}
