package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemoFeedTest {
    private static final JsonMapper JSON = new JsonMapper();

    private final List<DemoMessage> history = until(DemoStation.SEED, DemoStation.NOW);

    @Test
    void the_same_seed_gives_the_same_messages_and_another_seed_others() {
        List<DemoMessage> again = until(DemoStation.SEED, DemoStation.NOW);
        assertEquals(history, again);
        List<DemoMessage> other = until(DemoStation.SEED + 1, DemoStation.NOW);
        assertNotEquals(history.subList(0, 100), other.subList(0, 100));
    }

    @Test
    void messages_come_in_the_order_of_their_times_over_nine_days() {
        for (int i = 1; i < history.size(); i++) {
            assertFalse(history.get(i).at().isBefore(history.get(i - 1).at()), "message " + i);
        }
        assertTrue(history.get(0).at().isBefore(DemoStation.HISTORY_BEGINS.plusSeconds(120)));
        assertTrue(history.size() > 60_000 && history.size() < 150_000, "messages " + history.size());
    }

    @Test
    void the_silent_sensor_last_spoke_in_the_night_and_its_last_words_hold_no_value() {
        List<DemoMessage> heard = of("mirrenholt/linden-c-air");
        DemoMessage last = heard.get(heard.size() - 1);
        assertTrue(last.at().isBefore(DemoStation.FALLS_SILENT));
        assertTrue(last.text().contains("battery low"), last.text());
        long withoutValue =
                heard.stream().filter(m -> m.text().contains("battery low")).count();
        assertTrue(withoutValue >= 1 && withoutValue <= 5, "without value " + withoutValue);
    }

    @Test
    void bare_numbers_have_no_history() {
        assertEquals(List.of(), of("mirrenholt/alder-door"));
        List<DemoMessage> later = until(DemoStation.SEED, DemoStation.NOW.plusSeconds(600));
        assertTrue(later.stream().anyMatch(m -> m.topic().equals("mirrenholt/alder-door")));
    }

    @Test
    void the_bag_that_fell_shut_is_wet_in_the_last_night_and_the_other_one_is_not() throws Exception {
        Instant evening = DemoStation.NOW.minus(Duration.ofHours(8));
        double shut = mean("mirrenholt/spare-2", "/air/humidity", evening, DemoStation.NOW);
        double steady = mean("mirrenholt/spare-1", "/1/v", evening, DemoStation.NOW);
        assertTrue(shut > 96, "fallen shut " + shut);
        assertTrue(steady < 90, "hangs as it should " + steady);
    }

    @Test
    void before_it_fell_shut_that_bag_was_like_the_other() throws Exception {
        Instant evening = DemoStation.NOW.minus(Duration.ofHours(56));
        double later = mean("mirrenholt/spare-2", "/air/humidity", evening, evening.plus(Duration.ofHours(8)));
        assertTrue(later < 93, "an earlier night " + later);
    }

    @Test
    void house_humidity_stays_where_breeders_would_have_it() throws Exception {
        double linden = mean("mirrenholt/linden-air", "/air/humidity", DemoStation.HISTORY_BEGINS, DemoStation.NOW);
        double tankTable = mean("mirrenholt/alder-b-air", "/air/humidity", DemoStation.HISTORY_BEGINS, DemoStation.NOW);
        assertTrue(linden > 50 && linden < 80, "linden " + linden);
        assertTrue(tankTable > linden + 3 && tankTable < 90, "tank table " + tankTable);
    }

    private List<DemoMessage> of(String topic) {
        return history.stream().filter(m -> m.topic().equals(topic)).toList();
    }

    private double mean(String topic, String pointer, Instant from, Instant to) throws JsonProcessingException {
        double sum = 0;
        int count = 0;
        for (DemoMessage message : of(topic)) {
            if (!message.at().isBefore(from) && message.at().isBefore(to)) {
                sum += JSON.readTree(message.text()).at(pointer).doubleValue();
                count++;
            }
        }
        assertTrue(count > 100, topic + " was heard " + count + " times");
        return sum / count;
    }

    static List<DemoMessage> until(long seed, Instant end) {
        DemoFeed feed = new DemoFeed(seed);
        List<DemoMessage> messages = new ArrayList<>();
        DemoMessage next = feed.next();
        while (next.at().isBefore(end)) {
            messages.add(next);
            next = feed.next();
        }
        return messages;
    }
}
