package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmKey;
import bagward.alarm.Priority;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Sent;
import bagward.message.Told;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The outbox on disk. */
class SqliteOutboxTest {
    private static final ChannelName MAIL = new ChannelName("ruth-mail");
    private static final ChannelName HOOK = new ChannelName("gateway");
    private static final Instant NOW = Samples.START;

    private final Path file;
    private SqliteStores stores;
    private OutboxStore outbox;

    SqliteOutboxTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
        stores = SqliteStores.open(file, Samples.CLOCK);
        outbox = stores.outbox();
    }

    @AfterEach
    void close() {
        stores.close();
    }

    private void reopen() {
        stores.close();
        stores = SqliteStores.open(file, Samples.CLOCK);
        outbox = stores.outbox();
    }

    private static Told raised(String tag, int number) {
        AlarmKey key = new AlarmKey(new RuleId("bag-damp"), new Subject.Bag(new TagCode(tag)));
        return new Told("Ruth \"R\" Öst", key, NOW.plusNanos(7), Told.News.RAISED, number);
    }

    private static Message message(String id, Instant at, ChannelName... to) {
        return new Message(
                id,
                at,
                "Ruth \"R\" Öst",
                Priority.MEDIUM,
                "Two bags damp",
                "Line one\nLine two: 93 %RH",
                List.of(raised("T1", 1), raised("T2", 1)),
                Set.of(to));
    }

    private List<String> waiting(ChannelName channel) {
        return outbox.waiting(channel, 100).stream().map(d -> d.parcel().id()).toList();
    }

    @Test
    void every_field_of_a_message_survives_a_restart_and_it_waits_for_each_of_its_channels() {
        Message message = message("m1", NOW, MAIL, HOOK);
        outbox.put(List.of(message));
        reopen();
        assertEquals(new Parcel.Letter(message), outbox.waiting(MAIL, 10).get(0).parcel());
        assertEquals(
                Optional.of(new Parcel.Letter(message)),
                outbox.find(outbox.waiting(HOOK, 10).get(0).number()));
        assertEquals(Sent.NOTHING.with(List.of(message)), outbox.sent());
    }

    @Test
    void a_message_that_is_put_again_is_not_delivered_again_not_even_after_it_was_handed_over() {
        outbox.put(List.of(message("m1", NOW, MAIL)));
        outbox.handedOver(outbox.waiting(MAIL, 10).get(0), NOW.plusSeconds(1));
        reopen();
        outbox.put(List.of(message("m1", NOW.plusSeconds(5), MAIL), message("m2", NOW.plusSeconds(5), MAIL)));
        assertEquals(List.of("m2"), waiting(MAIL));
        assertEquals(Optional.of(NOW), outbox.sent().toldAt(raised("T1", 1)));
    }

    @Test
    void what_waits_comes_in_the_order_in_which_it_was_put_whatever_its_times() {
        outbox.put(List.of(message("m1", NOW, MAIL)));
        outbox.put(List.of(message("m0", NOW.minusSeconds(60), MAIL), message("m2", NOW, HOOK)));
        assertEquals(List.of("m1", "m0"), waiting(MAIL));
        assertEquals(1, outbox.waitingCount(HOOK));
    }

    @Test
    void a_failed_try_is_counted_with_its_reason_and_the_time_of_the_next() {
        outbox.put(List.of(message("m1", NOW, MAIL)));
        outbox.failed(outbox.waiting(MAIL, 1).get(0), NOW.plusSeconds(1), NOW.plusSeconds(6), "no answer");
        reopen();
        Delivery failed = outbox.waiting(MAIL, 1).get(0);
        assertEquals(1, failed.tries());
        assertEquals(NOW.plusSeconds(6), failed.nextTry());
        assertEquals("no answer", failed.trouble());
        outbox.givenUp(failed, NOW.plusSeconds(7), "refused for good");
        assertEquals(List.of(), waiting(MAIL));
        assertEquals(Delivery.State.GIVEN_UP, outbox.newest(5).get(0).state());
    }

    @Test
    void what_is_done_stays_done() {
        outbox.put(List.of(message("m1", NOW, MAIL)));
        Delivery delivery = outbox.waiting(MAIL, 1).get(0);
        outbox.handedOver(delivery, NOW.plusSeconds(1));
        outbox.failed(delivery, NOW.plusSeconds(2), NOW.plusSeconds(9), "late bad news");
        assertEquals(List.of(), waiting(MAIL));
        assertEquals(
                Optional.of(NOW.plusSeconds(1)), outbox.lastHandedOver(MAIL).map(Delivery::changedAt));
    }

    @Test
    void each_line_of_the_journal_goes_once_to_those_who_follow_it_and_none_from_before() {
        stores.alarms().save(AlarmBook.EMPTY, List.of(AlarmSamples.event("old")));
        assertEquals(0, outbox.takeJournal(Set.of(HOOK), NOW));
        stores.alarms().save(AlarmBook.EMPTY, List.of(AlarmSamples.event("one"), AlarmSamples.event("two")));
        assertEquals(2, outbox.takeJournal(Set.of(HOOK), NOW));
        reopen();
        assertEquals(0, outbox.takeJournal(Set.of(HOOK), NOW));
        assertEquals(
                List.of("one", "two"),
                outbox.waiting(HOOK, 10).stream()
                        .map(d -> ((Parcel.Change) d.parcel()).event().message())
                        .toList());
        assertEquals(List.of(), waiting(MAIL));
    }

    @Test
    void lines_that_nobody_followed_are_not_sent_to_who_follows_later() {
        outbox.takeJournal(Set.of(), NOW);
        stores.alarms().save(AlarmBook.EMPTY, List.of(AlarmSamples.event("one")));
        outbox.takeJournal(Set.of(), NOW);
        assertEquals(0, outbox.takeJournal(Set.of(HOOK), NOW));
    }

    @Test
    void what_waits_for_a_channel_that_is_gone_is_given_up_with_the_reason() {
        outbox.put(List.of(message("m1", NOW, MAIL, HOOK)));
        assertEquals(1, outbox.giveUpExcept(Set.of(MAIL), NOW));
        assertEquals(List.of("m1"), waiting(MAIL));
        assertTrue(outbox.newest(5).stream()
                .anyMatch(d -> d.channel().equals(HOOK) && d.trouble().contains("no longer configured")));
    }

    @Test
    void old_messages_are_forgotten_before_what_they_told_and_never_while_they_wait() {
        outbox.put(List.of(message("done", NOW, MAIL), message("waits", NOW, HOOK)));
        outbox.handedOver(outbox.waiting(MAIL, 1).get(0), NOW);
        outbox.forgetOld(NOW.plus(Duration.ofDays(OutboxStore.PARCEL_DAYS + 1)));
        assertEquals(Set.of("waits"), outbox.sent().ids());
        assertEquals(Optional.of(NOW), outbox.sent().toldAt(raised("T1", 1)));
        outbox.forgetOld(NOW.plus(Duration.ofDays(OutboxStore.TOLD_DAYS + 1)));
        assertEquals(Optional.empty(), outbox.sent().toldAt(raised("T1", 1)));
        assertEquals(List.of("waits"), waiting(HOOK));
    }

    @Test
    void a_trial_waits_for_its_channel_and_tells_nothing() {
        Parcel.Trial trial = new Parcel.Trial(NOW, "Ida", MAIL);
        outbox.putTrial(trial);
        reopen();
        assertEquals(trial, outbox.waiting(MAIL, 1).get(0).parcel());
        assertTrue(outbox.sent().told().isEmpty());
    }
}
