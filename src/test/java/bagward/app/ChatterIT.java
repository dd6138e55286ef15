package bagward.app;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.clockwork.HandClock;
import bagward.watch.WatchSettings;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bags whose humidity goes up and down at the limit for an hour, from readings in a real broker to a real web server. */
class ChatterIT {
    private static final Instant START = Instant.parse("2027-05-11T08:00:00Z");
    private static final Duration STEP = Duration.ofMinutes(2);
    private static final int STEPS = 28;
    private static final WatchSettings QUICK =
            new WatchSettings(Duration.ofMillis(5), Duration.ofMillis(50), Duration.ofDays(22), Duration.ofMinutes(5));

    private static final String TEXT = """
            houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: 9, across: 3}]}]
            people: [{name: Ada, channels: [hook], lists: false, tell-from: high}]
            """
            + DeliveryBench.DAMP_NOW
            + "sensors:\n"
            + DeliveryBench.sensor("near", true)
            + DeliveryBench.sensor("far", true);

    private final HandClock clock = new HandClock(START);
    private final ObjectMapper json = new ObjectMapper();

    @Test
    void one_that_stays_within_the_deadband_is_one_alarm_and_one_that_leaves_it_is_told_once_an_hour(
            @TempDir Path folder) throws Exception {
        try (DeliveryBench bench = new DeliveryBench(folder, clock, QUICK, TEXT, true)) {
            bench.watch().change(bag("NEAR", 1, "near"), "tester");
            bench.watch().change(bag("FAR", 2, "far"), "tester");
            for (int step = 1; step <= STEPS; step++) {
                hear(bench, step % 2 == 0 ? 90.5 : 89.2, step % 2 == 0 ? 93 : 86);
            }
            await().untilAsserted(() -> assertEquals(STEPS / 2, raised(bench, "bag:FAR")));
            assertEquals(1, raised(bench, "bag:NEAR"));
            assertEquals(1, told(bench, "bag:NEAR"));
            assertEquals(1, told(bench, "bag:FAR"));
        }
    }

    private static List<RegisterChange> bag(String tag, int spot, String sensor) {
        Instant at = START.minus(Duration.ofHours(1));
        return List.of(
                DeliveryBench.bag(tag, spot, at), new RegisterChange.Lend(new TagCode(tag), at, new SensorId(sensor)));
    }

    private void hear(DeliveryBench bench, double near, double far) throws Exception {
        clock.wait(STEP);
        bench.publish("t/near", clock.instant(), near);
        bench.publish("t/far", clock.instant(), far);
        await().until(() -> heard(bench, "NEAR", near) && heard(bench, "FAR", far));
    }

    private static boolean heard(DeliveryBench bench, String tag, double humidity) {
        return bench.watch()
                .board()
                .find(new TagCode(tag))
                .flatMap(bag -> bag.humidity())
                .filter(measure -> Math.abs(measure.value() - humidity) < 0.01)
                .isPresent();
    }

    /** How often the journal says that the alarm was raised. */
    private long raised(DeliveryBench bench, String subject) throws Exception {
        return said(bench).stream()
                .filter(post -> post.path("type").asText().equals("alarm-change"))
                .filter(post -> post.path("rule").asText().equals("damp-now"))
                .filter(post -> post.path("subject").asText().equals(subject))
                .filter(post -> post.path("to").asText().equals("unacknowledged"))
                .count();
    }

    /** How often a person was told that it is raised. */
    private long told(DeliveryBench bench, String subject) throws Exception {
        long told = 0;
        for (JsonNode post : said(bench)) {
            for (JsonNode alarm : post.path("alarms")) {
                boolean about = alarm.path("subject").asText().equals(subject);
                told += about && alarm.path("news").asText().equals("raised") ? 1 : 0;
            }
        }
        return told;
    }

    private List<JsonNode> said(DeliveryBench bench) throws Exception {
        List<JsonNode> posts = new ArrayList<>();
        for (String post : bench.posts()) {
            posts.add(json.readTree(post));
        }
        return posts;
    }
}
