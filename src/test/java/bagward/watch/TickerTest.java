package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** When boards are made. */
class TickerTest {
    /** On a busy machine a run notes its start some ms after the ticker has, which makes the pause after it look shorter. */
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

    @Test
    void it_runs_after_the_longest_pause_without_being_asked() {
        try (Ticker ticker = new Ticker(() -> run(0), Duration.ofMillis(1), Duration.ofMillis(20))) {
            ticker.start();
            await().until(() -> runs.size() >= 3);
        }
    }

    @Test
    void asked_it_runs_long_before_the_longest_pause() {
        try (Ticker ticker = new Ticker(() -> run(0), Duration.ofMillis(1), LONG)) {
            ticker.start();
            ticker.ask();
            await().until(() -> runs.size() == 1);
        }
    }

    @Test
    void asked_all_the_time_it_rests_as_long_as_it_works_and_keeps_the_shortest_pause() {
        long shortest = 20;
        try (Ticker ticker = new Ticker(() -> run(runs.size() % 2 == 0 ? 40 : 1), Duration.ofMillis(shortest), LONG)) {
            ticker.start();
            await().pollInterval(Duration.ofMillis(1)).until(() -> {
                ticker.ask();
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
    void closed_it_finishes_its_run_and_does_no_other() {
        Ticker ticker = new Ticker(() -> run(50), Duration.ofMillis(1), Duration.ofMillis(1));
        ticker.start();
        await().until(() -> !runs.isEmpty());
        ticker.close();
        int atClose = runs.size();
        ticker.ask();
        run(60);
        assertEquals(atClose + 1, runs.size());
    }
}
