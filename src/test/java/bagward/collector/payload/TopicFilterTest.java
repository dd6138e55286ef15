package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples are those of MQTT 3.1.1 sections 4.7.1 and 4.7.2, from memory, in words of our own. */
class TopicFilterTest {
    @ParameterizedTest
    @CsvSource({
        "house/north/air, house/north/air, true",
        "house/north/air, house/north/Air, false",
        "house/#, house/north/air, true",
        "house/#, house, true",
        "house/#, houses/north, false",
        "#, house/north/air, true",
        "house/+, house/north, true",
        "house/+, house/north/air, false",
        "house/+, house, false",
        "house/+, house/, true",
        "+, /air, false",
        "/+, /air, true",
        "+/+, /air, true",
        "+/air/#, north/air/top/left, true",
        "#, $SYS/uptime, false",
        "+/uptime, $SYS/uptime, false",
        "$SYS/#, $SYS/uptime, true",
    })
    void a_topic_fits_as_the_standard_says(String filter, String topic, boolean fits) {
        assertEquals(fits, new TopicFilter(filter).matches(topic));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "house/#/air", "house#", "house/no+rth", "a\u0000b", "##"})
    void what_a_broker_would_refuse_is_refused(String filter) {
        assertThrows(ImpossibleValueException.class, () -> new TopicFilter(filter));
    }

    @ParameterizedTest
    @CsvSource({
        "house/#, house/north/air, true",
        "house/#, house/+/air, true",
        "house/+, house/#, false",
        "+/air, north/+, false",
        "#, +/#, true",
        "#, $SYS/#, false",
        "a/b, a/b, true",
    })
    void a_filter_covers_another_if_it_takes_all_its_topics(String wide, String narrow, boolean covers) {
        assertEquals(covers, new TopicFilter(wide).covers(new TopicFilter(narrow)));
    }

    @ParameterizedTest
    @CsvSource({
        "a/b, a/b, true",
        "a/b, a/c, false",
        "a/+, +/b, true",
        "a/+, b/+, false",
        "a/+, a, false",
        "a/#, a, true",
        "a/#, +, true",
        "a/#, b/#, false",
        "a/+/c, a/b/#, true",
        "a/+/c, a/b/+/d, false",
        "#, $SYS/#, false",
        "+/b, $SYS/b, false",
        "$SYS/+, $SYS/b, true",
    })
    void two_filters_overlap_if_a_topic_can_fit_both(String one, String other, boolean overlaps) {
        assertEquals(overlaps, new TopicFilter(one).overlaps(new TopicFilter(other)));
        assertEquals(overlaps, new TopicFilter(other).overlaps(new TopicFilter(one)));
    }

    /** Law: whatever topic fits both, the filters overlap; and a filter overlaps all that it covers. */
    @Test
    void random_filters_overlap_where_a_topic_fits_both() {
        Random random = new Random(20261125);
        int met = 0;
        for (int i = 0; i < 200_000; i++) {
            TopicFilter one = new TopicFilter(some(random, List.of("a", "b", "+"), true));
            TopicFilter other = new TopicFilter(some(random, List.of("a", "b", "+"), true));
            String topic = some(random, List.of("a", "b"), false);
            if (one.matches(topic) && other.matches(topic)) {
                met++;
                assertTrue(one.overlaps(other), one + " " + other + " " + topic);
            }
            if (one.covers(other)) {
                assertTrue(one.overlaps(other), one + " " + other);
            }
        }
        assertTrue(met > 1_000, "too few to mean anything: " + met);
    }

    private static String some(Random random, List<String> levels, boolean hash) {
        String text = IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(i -> levels.get(random.nextInt(levels.size())))
                .collect(Collectors.joining("/"));
        return hash && random.nextInt(4) == 0 ? text + "/#" : text;
    }
}
