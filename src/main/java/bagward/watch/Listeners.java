package bagward.watch;

import bagward.board.Board;
import bagward.watch.Watch.Subscription;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Hands each new board to every listener, each on a thread of its own while it has work. A listener that is slower than
 * the boards come misses some of them, never the newest, and keeps nobody waiting.
 */
final class Listeners implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

    private final Set<Mailbox> mailboxes = ConcurrentHashMap.newKeySet();

    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "board-listener");
        thread.setDaemon(true);
        return thread;
    });

    /** Adds a listener until the handle is closed. */
    Subscription add(Consumer<Board> listener) {
        Mailbox mailbox = new Mailbox(listener);
        mailboxes.add(mailbox);
        return () -> mailboxes.remove(mailbox);
    }

    /** Hands out a board; returns at once. */
    void publish(Board board) {
        mailboxes.forEach(mailbox -> mailbox.put(board));
    }

    @Override
    public void close() {
        mailboxes.clear();
        threads.shutdown();
    }

    /** Holds the newest board that its listener has not seen. */
    private final class Mailbox {
        private final Consumer<Board> listener;
        private final AtomicReference<@Nullable Board> newest = new AtomicReference<>();

        Mailbox(Consumer<Board> listener) {
            this.listener = listener;
        }

        void put(Board board) {
            Board unseen = newest.getAndSet(board);
            if (unseen == null) {
                threads.execute(this::deliver);
            }
        }

        private synchronized void deliver() {
            Board board = newest.getAndSet(null);
            if (board == null || !mailboxes.contains(this)) {
                return;
            }
            try {
                listener.accept(board);
            } catch (RuntimeException e) {
                LOG.warn("a listener failed on a board", e);
            }
        }
    }
}
