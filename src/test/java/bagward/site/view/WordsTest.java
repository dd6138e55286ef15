package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");

    @ParameterizedTest
    @CsvSource({
        "PT45S, 45 s",
        "PT119S, 119 s",
        "PT12M30S, 12 min",
        "PT3H20M, 3 h 20 min",
        "PT47H, 47 h",
        "PT52H, 2 d 4 h",
        "PT72H, 3 d"
    })
    void a_span_is_said_in_its_two_largest_parts(Duration span, String words) {
        assertEquals(words, Words.span(span));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-05-11T01:00:00Z, today",
        "2027-05-11T22:30:00Z, tomorrow",
        "2027-05-14T08:00:00Z, in 3 days",
        "2027-05-10T08:00:00Z, 1 day late",
        "2027-05-09T21:59:00Z, 2 days late"
    })
    void due_days_are_counted_on_the_calendar_of_the_station(Instant due, String words) {
        assertEquals(words, Words.dueIn(due, Instant.parse("2027-05-11T07:40:00Z"), ZONE));
    }

    @Test
    void numbers_round_and_keep_a_true_minus_sign() {
        assertEquals("−3.5", Words.oneDecimal(-3.46));
        assertEquals("0.0", Words.oneDecimal(-0.04));
        assertEquals("94", Words.whole(93.5));
    }
}
