package bagward.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmKey;
import bagward.alarm.Priority;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.fault.ImpossibleValueException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SentTest {
    private static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");
    private static final AlarmKey DAMP = new AlarmKey(new RuleId("bag-damp"), new Subject.Bag(new TagCode("T1")));
    private static final Told RAISED = new Told("Ruth", DAMP, NOON, Told.News.RAISED, 1);

    private static Message message(String id, Instant at, String subject) {
        return new Message(
                id, at, "Ruth", Priority.HIGH, subject, "text", List.of(RAISED), Set.of(new ChannelName("ruth-mail")));
    }

    @Test
    void what_was_put_is_known_by_its_id_and_by_the_states_it_told() {
        Sent sent = Sent.NOTHING.with(List.of(message("m1", NOON, "Damp")));
        assertTrue(sent.has("m1"));
        assertFalse(sent.has("m2"));
        assertEquals(Optional.of(NOON), sent.toldAt(RAISED));
        assertEquals(Optional.empty(), sent.toldAt(new Told("Osei", DAMP, NOON, Told.News.RAISED, 1)));
    }

    @Test
    void putting_the_same_again_changes_nothing() {
        Sent once = Sent.NOTHING.with(List.of(message("m1", NOON, "Damp")));
        assertEquals(once, once.with(List.of(message("m1", NOON.plusSeconds(9), "Damp, composed again"))));
    }

    @Test
    void a_message_that_could_not_go_out_is_refused() {
        assertThrows(ImpossibleValueException.class, () -> message("", NOON, "Damp"));
        assertThrows(ImpossibleValueException.class, () -> message("m1", NOON, "Damp\nBcc: everybody"));
        assertThrows(
                ImpossibleValueException.class,
                () -> new Message("m1", NOON, "Ruth", Priority.LOW, "Damp", "text", List.of(), Set.of()));
    }
}
