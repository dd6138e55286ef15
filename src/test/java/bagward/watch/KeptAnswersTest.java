package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class KeptAnswersTest {
    private static final Instant NOON = Instant.parse("2031-05-01T12:00:00Z");

    private final KeptAnswers<Integer> answers = new KeptAnswers<>(Duration.ofMinutes(5));
    private int worked;

    @Test
    void an_answer_stands_for_its_time_and_is_then_worked_out_anew() {
        assertEquals(1, ask("a", 0));
        assertEquals(1, ask("a", 299));
        assertEquals(2, ask("a", 300));
    }

    @Test
    void another_question_has_an_answer_of_its_own() {
        assertEquals(1, ask("a", 0));
        assertEquals(2, ask("b", 0));
        assertEquals(1, ask("a", 1));
    }

    @Test
    void an_answer_of_later_is_not_given_to_a_clock_that_was_set_back() {
        assertEquals(1, ask("a", 0));
        assertEquals(2, ask("a", -60));
    }

    @Test
    void the_oldest_answers_are_forgotten() {
        for (int i = 0; i <= 100; i++) {
            ask(i, 0);
        }
        assertEquals(101, worked);
        assertEquals(101, ask(100, 1));
        assertEquals(102, ask(0, 1));
    }

    private int ask(Object question, int second) {
        return answers.answer(question, NOON.plusSeconds(second), () -> ++worked);
    }
}
