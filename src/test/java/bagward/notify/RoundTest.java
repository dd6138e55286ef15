package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.clockwork.HandClock;
import bagward.message.Message;
import bagward.store.Delivery;
import bagward.store.OutboxStore;
import bagward.store.SqliteStores;
import bagward.store.StoreException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What waits for one channel, in scripted time on a real outbox. */
class RoundTest {
    private final HandClock clock = new HandClock(Letters.NOON);
    private final ScriptedChannel channel = new ScriptedChannel();
    private final SqliteStores stores;
    private final OutboxStore outbox;

    RoundTest(@TempDir Path folder) {
        stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
        outbox = stores.outbox();
    }

    @AfterEach
    void close() {
        stores.close();
    }

    private Round round(OutboxStore on) {
        return new Round(
                on,
                channel,
                delivery -> new Outgoing(delivery.parcel(), "Alder Bank", ZoneOffset.UTC, Optional.empty()),
                RetryPlan.USUAL,
                new SplittableRandom(1),
                clock);
    }

    private static DeliveryException outOfReach() {
        return DeliveryException.outOfReach("no answer", null);
    }

    private static DeliveryException refused() {
        return DeliveryException.refused("550 unknown here", null);
    }

    /** Passes at every time at which something is due, until nothing waits. */
    private void passUntilEmpty(Round round) {
        Optional<Instant> due = round.pass();
        for (int passes = 0; due.isPresent(); passes++) {
            assertTrue(passes < 10_000, "it never ends");
            clock.set(due.get().isAfter(clock.instant()) ? due.get() : clock.instant());
            due = round.pass();
        }
        assertEquals(List.of(), outbox.waiting(Letters.CHANNEL, 10));
    }

    @Test
    void whatever_call_fails_every_message_arrives_once_and_in_order_for_each_bag() {
        for (int n = 1; n <= 8; n++) {
            int failing = n;
            channel.taken().clear();
            channel.script((call, id) -> call == failing ? outOfReach() : null);
            List<Message> messages = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                messages.add(Letters.about("T" + i % 3, n + "-" + i));
            }
            outbox.put(messages);
            passUntilEmpty(round(outbox));
            assertEquals(8, channel.taken().size(), "call " + n + " failed");
            for (int bag = 0; bag < 3; bag++) {
                String tag = "T" + bag;
                assertEquals(idsAbout(tag, messages), takenOf(idsAbout(tag, messages)), "call " + n + " failed");
            }
        }
    }

    private static List<String> idsAbout(String tag, List<Message> messages) {
        return messages.stream()
                .filter(m -> m.subject().contains(tag + " "))
                .map(Message::id)
                .toList();
    }

    private List<String> takenOf(List<String> ids) {
        return channel.taken().stream().filter(ids::contains).toList();
    }

    @Test
    void a_channel_out_of_reach_is_left_alone_for_waits_that_double_up_to_a_minute() {
        channel.script((call, id) -> outOfReach());
        outbox.put(List.of(Letters.about("T1", "m1"), Letters.about("T2", "m2")));
        Round round = round(outbox);
        List<Long> waits = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Instant due = round.pass().orElseThrow();
            assertEquals(i + 1, channel.calls(), "only one message probes the channel");
            waits.add(Duration.between(clock.instant(), due).toSeconds());
            clock.wait(Duration.between(clock.instant(), due).minusMillis(1));
            round.pass();
            assertEquals(i + 1, channel.calls(), "nothing is tried before its time");
            clock.set(due);
        }
        for (int i = 0; i < waits.size(); i++) {
            double plain = Math.min(60, 2 * Math.pow(2, i));
            assertTrue(waits.get(i) >= Math.floor(plain) && waits.get(i) <= plain * 1.25, waits::toString);
        }
        assertEquals("no answer", round.trouble().orElseThrow().says());
        assertEquals(Letters.NOON, round.trouble().orElseThrow().since());
        channel.script((call, id) -> null);
        passUntilEmpty(round);
        assertEquals(Optional.empty(), round.trouble());
    }

    @Test
    void a_message_that_is_refused_holds_up_those_about_the_same_bag_and_no_others() {
        channel.script((call, id) -> id.equals("first") ? refused() : null);
        outbox.put(List.of(Letters.about("T1", "first"), Letters.about("T1", "second"), Letters.about("T2", "other")));
        Round round = round(outbox);
        round.pass();
        assertEquals(List.of("other"), channel.taken());
        channel.script((call, id) -> null);
        passUntilEmpty(round);
        assertEquals(List.of("other", "first", "second"), channel.taken());
    }

    @Test
    void a_message_that_is_refused_for_three_days_is_given_up_and_the_next_about_its_bag_goes() {
        channel.script((call, id) -> id.equals("first") ? refused() : null);
        outbox.put(List.of(Letters.about("T1", "first"), Letters.about("T1", "second")));
        passUntilEmpty(round(outbox));
        assertEquals(List.of("second"), channel.taken());
        assertTrue(clock.instant().isAfter(Letters.NOON.plus(Duration.ofDays(3))));
        assertTrue(outbox.newest(5).stream()
                .anyMatch(
                        d -> d.state() == Delivery.State.GIVEN_UP && d.trouble().contains("550")));
    }

    @Test
    void what_is_out_of_reach_for_weeks_arrives_all_the_same() {
        channel.script(
                (call, id) -> clock.instant().isBefore(Letters.NOON.plus(Duration.ofDays(20))) ? outOfReach() : null);
        outbox.put(List.of(Letters.about("T1", "m1")));
        Round round = round(outbox);
        for (int i = 0; i < 24 * 20; i++) {
            round.pass();
            clock.wait(Duration.ofHours(1));
        }
        passUntilEmpty(round);
        assertEquals(List.of("m1"), channel.taken());
    }

    @Test
    void a_message_that_was_taken_but_could_not_be_noted_is_noted_later_and_not_handed_over_again() {
        AtomicBoolean full = new AtomicBoolean(true);
        OutboxStore failing = (OutboxStore) Proxy.newProxyInstance(
                getClass().getClassLoader(), new Class<?>[] {OutboxStore.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("handedOver") && full.get()) {
                        throw new StoreException("the disk is full");
                    }
                    try {
                        return method.invoke(outbox, arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
        outbox.put(List.of(Letters.about("T1", "m1")));
        Round round = round(failing);
        assertThrows(StoreException.class, round::pass);
        assertThrows(StoreException.class, round::pass);
        full.set(false);
        assertEquals(Optional.empty(), round.pass());
        assertEquals(List.of("m1"), channel.taken());
        assertFalse(outbox.lastHandedOver(Letters.CHANNEL).isEmpty());
    }
}
