package bagward.clockwork;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class ClockworkTest {
    /** On a busy machine a run notes its start some ms after the clockwork has, which makes the pause after it look shorter. */
    private static final long NOTED_LATE = 10;

    private static final Duration LONG = Duration.ofHours(1);

    private record Run(long start, long end) {}

    private final List<Run> runs = new CopyOnWriteArrayList<>();

    private void run(long millis) {
        long start = System.nanoTime();
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        runs.add(new Run(start, System.nanoTime()));
    }

    private static Clockwork resting(Runnable task, Duration shortest, Duration longest) {
        return Clockwork.resting("test", new Pause(shortest, longest), task);
    }

    @Test
    void it_runs_after_the_longest_pause_without_being_asked() {
        try (Clockwork clockwork = resting(() -> run(0), Duration.ofMillis(1), Duration.ofMillis(20))) {
            clockwork.start();
            await().until(() -> runs.size() >= 3);
        }
    }

    @Test
    void asked_it_runs_long_before_the_longest_pause() {
        try (Clockwork clockwork = resting(() -> run(0), Duration.ofMillis(1), LONG)) {
            clockwork.start();
            clockwork.ask();
            await().until(() -> runs.size() == 1);
        }
    }

    @Test
    void asked_all_the_time_it_rests_as_long_as_it_works_and_keeps_the_shortest_pause() {
        long shortest = 20;
        try (Clockwork clockwork =
                resting(() -> run(runs.size() % 2 == 0 ? 40 : 1), Duration.ofMillis(shortest), LONG)) {
            clockwork.start();
            await().pollInterval(Duration.ofMillis(1)).until(() -> {
                clockwork.ask();
                return runs.size() >= 8;
            });
        }
        for (int i = 1; i < runs.size(); i++) {
            Run before = runs.get(i - 1);
            long pause = runs.get(i).start() - before.start();
            assertTrue(pause >= 2 * (before.end() - before.start()), "no rest after run " + (i - 1));
            assertTrue(pause >= TimeUnit.MILLISECONDS.toNanos(shortest - NOTED_LATE), "run " + i + " came too soon");
        }
    }

    @Test
    void each_run_names_the_pause_after_it_and_being_asked_ends_it() {
        Supplier<Pause> task = () -> {
            run(0);
            return runs.size() < 3 ? Pause.atMost(Duration.ofMillis(5)) : Pause.atMost(LONG);
        };
        try (Clockwork clockwork = new Clockwork("test", Pause.atMost(Duration.ZERO), task, LONG)) {
            clockwork.start();
            await().until(() -> runs.size() == 3);
            run(50);
            assertEquals(4, runs.size(), "it rests");
            clockwork.ask();
            await().until(() -> runs.size() == 5);
        }
    }

    @Test
    void asked_during_a_run_it_runs_once_more() {
        AtomicInteger begun = new AtomicInteger();
        Supplier<Pause> task = () -> {
            begun.incrementAndGet();
            run(100);
            return Pause.atMost(LONG);
        };
        try (Clockwork clockwork = new Clockwork("test", Pause.atMost(Duration.ZERO), task, LONG)) {
            clockwork.start();
            await().pollInterval(Duration.ofMillis(1)).until(() -> begun.get() == 1);
            clockwork.ask();
            clockwork.ask();
            await().until(() -> runs.size() == 2);
            run(50);
            assertEquals(2, begun.get(), "once more, not twice");
        }
    }

    @Test
    void closed_it_finishes_its_run_and_does_no_other() {
        Clockwork clockwork = resting(() -> run(50), Duration.ofMillis(1), Duration.ofMillis(1));
        clockwork.start();
        await().until(() -> !runs.isEmpty());
        clockwork.close();
        int atClose = runs.size();
        clockwork.ask();
        run(60);
        assertEquals(atClose + 1, runs.size());
    }
}
