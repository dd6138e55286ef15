package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.fault.ImpossibleValueException;
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
}
