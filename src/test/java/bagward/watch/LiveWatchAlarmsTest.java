package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Aside;
import bagward.alarm.RuleId;
import bagward.fault.RefusedInputException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Alarms of the running watch: kept over a restart, acted on by people, saved when they change. */
class LiveWatchAlarmsTest extends WatchStage {
    @Test
    void an_alarm_whose_delay_runs_survives_a_restart_and_is_raised_when_the_delay_is_over() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(0, 4, 95));
        boardAt(4);
        assertEquals(Optional.of(AlarmPhase.PENDING), phase());
        Instant since = alarms.loadAlarms().find(DAMP).orElseThrow().since();

        restart();
        start();
        hear(house(4, 7, 95));
        boardAt(7);
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));
        Alarm raised = alarms.loadAlarms().find(DAMP).orElseThrow();
        assertEquals(since, raised.since());
    }

    @Test
    void an_acknowledged_alarm_is_so_on_the_board_at_once_and_after_a_restart() {
        watch.change(List.of(putOn(0)), "Mirja");
        clock.set(hour(7));
        hear(house(0, 7, 95));
        start();
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));

        assertEquals(Set.of(DAMP), watch.acknowledge(Set.of(DAMP), "Ida"));
        assertEquals(AlarmPhase.ACKNOWLEDGED, listed().phase());
        assertEquals(Set.of(), watch.acknowledge(Set.of(DAMP), "Per"), "it was acknowledged already");
        assertEquals(Set.of(), watch.acknowledge(Set.of(new AlarmKey(new RuleId("hot"), DAMP.subject())), "Per"));
        AlarmEvent event = alarms.newestEvents(1).get(0);
        assertEquals("Ida", event.by());
        assertEquals(AlarmPhase.ACKNOWLEDGED, event.to());

        restart();
        assertEquals(Optional.of("Ida"), listed().acknowledgedBy());
    }

    @Test
    void many_alarms_are_acknowledged_with_one_save_and_a_line_of_the_journal_each() {
        watch.change(
                IntStream.rangeClosed(1, 20)
                        .mapToObj(spot -> putOn("M-" + spot, spot))
                        .toList(),
                "Mirja");
        clock.set(hour(7));
        hear(house(0, 7, 95));
        start();
        await().until(() -> unseen().size() == 20);
        int saves = alarms.saves();

        Set<AlarmKey> all = unseen();
        assertEquals(all, watch.acknowledge(all, "Ida"));

        assertEquals(saves + 1, alarms.saves());
        assertEquals(Set.of(), unseen());
        List<AlarmEvent> newest = alarms.newestEvents(20);
        assertEquals(all, newest.stream().map(AlarmEvent::key).collect(Collectors.toSet()));
        assertTrue(newest.stream().allMatch(event -> event.by().equals("Ida")), newest::toString);
    }

    @Test
    void an_alarm_is_acknowledged_while_a_slow_board_is_being_made_and_stays_so_on_it() throws InterruptedException {
        watch.change(List.of(putOn(0)), "Mirja");
        clock.set(hour(7));
        hear(house(0, 7, 95));
        start();
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));
        CountDownLatch slow = new CountDownLatch(1);
        CountDownLatch begun = holdBoards(slow);
        try {
            assertTrue(begun.await(10, TimeUnit.SECONDS), "no board was begun");
            Set<AlarmKey> done = assertTimeoutPreemptively(
                    Duration.ofSeconds(10), () -> watch.acknowledge(Set.of(DAMP), "Ida"), "it waits for the board");
            assertEquals(Set.of(DAMP), done);
            assertEquals(AlarmPhase.ACKNOWLEDGED, listed().phase());
        } finally {
            slow.countDown();
        }
        boardAt(7 + 1 / 60.0);
        assertEquals(AlarmPhase.ACKNOWLEDGED, listed().phase());
    }

    private Set<AlarmKey> unseen() {
        return watch.board().alarms().stream()
                .filter(view -> view.alarm().phase() == AlarmPhase.UNACKNOWLEDGED)
                .map(view -> view.alarm().key())
                .filter(key -> key.rule().equals(DAMP.rule()))
                .collect(Collectors.toSet());
    }

    @Test
    void a_shelved_alarm_is_off_the_list_at_once_and_after_a_restart_and_comes_back_by_itself() {
        watch.change(List.of(putOn(0)), "Mirja");
        clock.set(hour(7));
        hear(house(0, 20, 95));
        start();
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));

        watch.act(new AlarmAct.Shelve(DAMP, "Ida", hour(9), "bay is washed"));
        assertEquals(List.of(), listedDamp());
        Aside aside = watch.board().setAside().get(0).alarm().aside().orElseThrow();
        assertEquals(new Aside("Ida", hour(7), Optional.of(hour(9)), "bay is washed"), aside);
        assertEquals("bay is washed", alarms.newestEvents(1).get(0).why());

        restart();
        assertEquals(List.of(), listedDamp());
        start();
        boardAt(9);
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, listed().phase());
    }

    @Test
    void an_alarm_out_of_service_stays_off_until_somebody_brings_it_back() {
        watch.change(List.of(putOn(0)), "Mirja");
        watch.act(new AlarmAct.TakeOutOfService(DAMP, "Ida", "bag is part of a trial"));
        hear(house(0, 40, 95));
        start();
        boardAt(30);
        assertEquals(Optional.of(AlarmPhase.OUT_OF_SERVICE), phase());
        watch.act(new AlarmAct.BringBack(DAMP, "Per"));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, listed().phase());
        assertEquals(
                List.of("Ida", "Per", "rule"),
                alarms.events(hour(0), hour(31)).stream()
                        .filter(event -> event.key().equals(DAMP))
                        .map(AlarmEvent::by)
                        .toList());
    }

    @Test
    void an_act_that_is_not_allowed_is_refused_and_changes_nothing() {
        assertThrows(
                RefusedInputException.class,
                () -> watch.act(new AlarmAct.Shelve(DAMP, "Ida", hour(9), "there is no such alarm")));
        assertEquals(List.of(), alarms.newestEvents(10));
    }

    @Test
    void alarms_are_saved_when_they_change_and_not_with_every_board() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(0, 4, 95));
        boardAt(4);
        int saves = alarms.saves();
        for (int minute = 1; minute <= 10; minute++) {
            boardAt(4 + minute / 60.0);
        }
        assertEquals(saves, alarms.saves());
    }

    @Test
    void alarms_are_on_the_board_while_the_store_is_away_and_saved_with_their_events_when_it_is_back() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        alarms.away(true);
        clock.set(hour(7));
        hear(house(0, 7, 95));
        await().until(() -> !watch.board().alarms().isEmpty());
        assertFalse(part("database").well());
        assertTrue(
                part("database").says().contains("the disk is away"),
                part("database").says());
        assertEquals(Optional.empty(), phase());

        alarms.away(false);
        await().until(() -> part("database").well());
        assertEquals(Optional.of(AlarmPhase.UNACKNOWLEDGED), phase());
        assertTrue(
                alarms.newestEvents(10).stream().anyMatch(event -> event.key().equals(DAMP)));
    }

    private Alarm listed() {
        return listedDamp().get(0);
    }

    private List<Alarm> listedDamp() {
        return watch.board().alarms().stream()
                .map(view -> view.alarm())
                .filter(alarm -> alarm.key().equals(DAMP))
                .toList();
    }
}
