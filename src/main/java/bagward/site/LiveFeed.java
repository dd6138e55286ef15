package bagward.site;

import bagward.watch.Watch;
import io.javalin.http.sse.SseClient;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/**
 * Tells open pages that there is a new board, and beats in between so that a page notices a lost link. A page that takes
 * its messages slowly misses some and never holds up the others. Safe for use by several threads.
 */
final class LiveFeed implements AutoCloseable {
    private static final int MOST_PAGES = 200;
    private static final long BEAT_SECONDS = 5;

    private final Supplier<String> age;
    private final Set<Page> pages = ConcurrentHashMap.newKeySet();
    private final ExecutorService senders = Executors.newCachedThreadPool(task -> daemon(task, "site-live-sender"));
    private final ScheduledExecutorService beat =
            Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "site-live-beat"));
    private final Watch.Subscription subscription;

    /**
     * Begins to listen.
     *
     * @param watch makes the boards
     * @param age says how old the newest one is
     */
    LiveFeed(Watch watch, Supplier<String> age) {
        this.age = age;
        this.subscription = watch.listen(board -> tellAll());
        var unused =
                beat.scheduleAtFixedRate(() -> pages.forEach(this::pump), BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS);
    }

    /** Adds a page that has opened the stream. */
    void join(SseClient client) {
        if (pages.size() >= MOST_PAGES) {
            client.close();
            return;
        }
        Page page = new Page(client, new AtomicBoolean(), new AtomicBoolean());
        client.keepAlive();
        client.onClose(() -> pages.remove(page));
        pages.add(page);
        pump(page);
    }

    int openPages() {
        return pages.size();
    }

    private void tellAll() {
        pages.forEach(page -> {
            page.newBoard().set(true);
            pump(page);
        });
    }

    private void pump(Page page) {
        if (page.busy().compareAndSet(false, true)) {
            senders.execute(() -> deliver(page));
        }
    }

    private void deliver(Page page) {
        try {
            String event = page.newBoard().getAndSet(false) ? "board" : "beat";
            page.client().sendEvent(event, age.get());
            if (page.client().terminated()) {
                pages.remove(page);
            }
        } finally {
            page.busy().set(false);
        }
        if (page.newBoard().get() && pages.contains(page)) {
            pump(page);
        }
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void close() {
        subscription.close();
        beat.shutdownNow();
        senders.shutdownNow();
        pages.forEach(page -> page.client().close());
    }

    private record Page(SseClient client, AtomicBoolean busy, AtomicBoolean newBoard) {}
}
