package bagward.app;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange;
import bagward.watch.WatchSettings;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five hundred bags go wet at once: from readings in a real broker to messages at a real mail and a real web server. */
class StormIT {
    private static final int BAGS = 500;
    private static final int HANDFUL = 5;
    /** Aimed at are 10 s on a calm machine; a busy one that also runs other tests gets more. */
    private static final Duration LATEST = Duration.ofSeconds(40);

    private static final String TEXT =
            """
            houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: 500, across: 5}]}]
            people:
            - {name: Ruth, channels: [mail], lists: false, tell-from: high}
            - {name: Ada, channels: [hook], lists: false, tell-from: high}
            """ + DeliveryBench.DAMP_NOW + "sensors:\n" + DeliveryBench.sensor("post", false);

    private final ObjectMapper json = new ObjectMapper();
    private final Instant now = Instant.now().truncatedTo(ChronoUnit.MINUTES);

    @Test
    void all_of_them_are_told_in_a_handful_of_messages_within_seconds_and_confirmed_by_links(@TempDir Path folder)
            throws Exception {
        try (DeliveryBench bench = new DeliveryBench(folder, Clock.systemUTC(), WatchSettings.USUAL, TEXT, false)) {
            bench.watch().change(bags(now.minus(Duration.ofHours(2))), "tester");
            publish(bench, 130, 16, 60);
            Instant dryUntil = now.minus(Duration.ofMinutes(16));
            await().atMost(LATEST)
                    .until(() -> bench.watch().board().newestReading().equals(Optional.of(dryUntil)));
            assertEquals(0, bench.unseen());

            long begun = System.nanoTime();
            publish(bench, 15, 0, 97);
            List<JsonNode> messages = untilAllAreTold(bench);
            Duration told = Duration.ofNanos(System.nanoTime() - begun);

            assertTrue(told.compareTo(LATEST) < 0, told::toString);
            assertTrue(messages.size() <= HANDFUL, messages.size() + " messages");
            assertTrue(bench.mail().waitForIncomingEmail(30_000, messages.size()), "Ruth gets as many as Ada");
            assertEquals(messages.size(), bench.mail().getReceivedMessages().length);
            Duration confirmed = confirm(bench, messages);
            System.out.printf(
                    "%d bags wet at once: told in %d ms by %d messages, confirmed in %d ms%n",
                    BAGS, told.toMillis(), messages.size(), confirmed.toMillis());
        }
    }

    private static List<RegisterChange> bags(Instant at) {
        return IntStream.rangeClosed(1, BAGS)
                .mapToObj(number -> DeliveryBench.bag("S-" + number, number, at))
                .toList();
    }

    /** A reading of the house each minute. */
    private void publish(DeliveryBench bench, int fromMinutesAgo, int toMinutesAgo, double humidity)
            throws MqttException {
        for (int ago = fromMinutesAgo; ago >= toMinutesAgo; ago--) {
            bench.publish("t/post", now.minus(Duration.ofMinutes(ago)), humidity);
        }
    }

    private List<JsonNode> untilAllAreTold(DeliveryBench bench) throws Exception {
        List<JsonNode> messages = new ArrayList<>();
        Set<String> told = new HashSet<>();
        while (told.size() < BAGS) {
            String post = bench.posts().poll(LATEST.toSeconds(), TimeUnit.SECONDS);
            JsonNode message = json.readTree(Objects.requireNonNull(post, () -> "told of only " + told.size()));
            messages.add(message);
            message.path("alarms")
                    .forEach(alarm -> told.add(alarm.path("subject").asText()));
        }
        return messages;
    }

    private static Duration confirm(DeliveryBench bench, List<JsonNode> messages) throws Exception {
        assertEquals(BAGS, bench.unseen());
        long begun = System.nanoTime();
        for (JsonNode message : messages) {
            assertEquals(
                    303,
                    DeliveryBench.press(URI.create(message.path("confirm-page").asText())));
        }
        Duration took = Duration.ofNanos(System.nanoTime() - begun);
        assertEquals(0, bench.unseen());
        return took;
    }
}
