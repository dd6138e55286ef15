package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlookWordsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.72   | 0.5    | 0.88   | 72 % (95 % interval 50 to 88)
            0.994  | 0.985  | 0.9949 | 99 % (95 % interval 99 to 99)
            0.9951 | 0.9    | 0.9999 | over 99 % (95 % interval 90 to over 99)
            0.0049 | 0.0001 | 0.012  | under 1 % (95 % interval under 1 to 1)
            """)
    void nothing_that_may_be_otherwise_is_told_as_certain(double share, double low, double high, String words) {
        assertEquals(words, OutlookWords.chance(new Chance(share, new Interval(low, high, 0.95), Chance.Basis.LEARNT)));
    }

    @Test
    void a_range_of_equal_ends_is_one_number() {
        assertEquals("31 to 72", OutlookWords.range(0.312, 0.718));
        assertEquals("93", OutlookWords.range(0.928, 0.934));
    }
}
