package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.watch.WatchSettings;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole chain: readings in a broker become an alarm, a mail in a real mail server, and its link confirms the alarm. How
 * long it takes to hand over is measured at a program that follows the journal, since messages to people are bundled.
 * BAGWARD_DELAYS says how many bags are measured one after the other; 5 if it is not set.
 */
class DeliveringIT {
    private static final int BAGS = Integer.parseInt(System.getenv().getOrDefault("BAGWARD_DELAYS", "5"));
    private static final Pattern LINK = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/answer/\\S+");

    @Test
    void readings_become_a_mail_within_seconds_and_its_link_confirms_the_alarm(@TempDir Path folder) throws Exception {
        try (DeliveryBench bench = new DeliveryBench(folder, Clock.systemUTC(), WatchSettings.USUAL, text(), true)) {
            say(delays(bench));
            assertTrue(bench.mail().waitForIncomingEmail(60_000, 1), "no mail");
            confirm(bench);
        }
    }

    private static String text() {
        StringBuilder sensors = new StringBuilder("sensors:\n");
        for (int bag = 1; bag <= BAGS; bag++) {
            sensors.append(DeliveryBench.sensor("spare-" + bag, true));
        }
        return """
                houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: %d, across: 2}]}]
                people: [{name: Ruth, channels: [mail], lists: false, tell-from: high}]
                """.formatted(BAGS + 1) + DeliveryBench.DAMP_NOW + sensors;
    }

    private static List<Long> delays(DeliveryBench bench) throws Exception {
        List<Long> delays = new ArrayList<>();
        for (int bag = 1; bag <= BAGS; bag++) {
            delays.add(delay(bench, bag));
        }
        Collections.sort(delays);
        return delays;
    }

    private static void say(List<Long> delays) {
        long median = delays.get(delays.size() / 2);
        long late = delays.get((int) Math.ceil(0.99 * delays.size()) - 1);
        System.out.printf(
                "delay from reading published to message handed over: median %d ms, 99th percentile %d ms, %d alarms%n",
                median, late, delays.size());
        assertTrue(median < 10_000, delays::toString);
    }

    private static long delay(DeliveryBench bench, int bag) throws Exception {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        Instant putOn = now.minus(Duration.ofHours(2));
        RegisterChange lend = new RegisterChange.Lend(new TagCode("T-" + bag), putOn, new SensorId("spare-" + bag));
        bench.watch().change(List.of(DeliveryBench.bag("T-" + bag, bag, putOn), lend), "tester");
        String topic = "t/spare-" + bag;
        bench.publish(topic, now.minus(Duration.ofMinutes(2)), 60);
        bench.publish(topic, now.minus(Duration.ofMinutes(1)), 97);
        long begun = System.nanoTime();
        bench.publish(topic, now, 97);
        String wanted = "\"rule\":\"damp-now\",\"subject\":\"bag:T-" + bag + "\"";
        for (String post = ""; !post.contains(wanted); ) {
            post = Objects.requireNonNull(bench.posts().poll(60, TimeUnit.SECONDS), "nothing was handed over");
        }
        return Duration.ofNanos(System.nanoTime() - begun).toMillis();
    }

    private static void confirm(DeliveryBench bench) throws Exception {
        String mail = ((String) bench.mail().getReceivedMessages()[0].getContent()).replace("\r\n", "\n");
        Matcher link = LINK.matcher(mail);
        assertTrue(link.find(), mail);
        URI address = URI.create(link.group());
        long open = bench.unseen();
        assertEquals(200, DeliveryBench.look(address));
        assertEquals(open, bench.unseen(), "opening the page changes nothing");
        assertEquals(303, DeliveryBench.press(address));
        assertTrue(bench.unseen() < open, "its alarms are confirmed");
    }
}
