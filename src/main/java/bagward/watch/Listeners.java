package bagward.watch;

import bagward.board.Board;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Hands boards to listeners on a thread of its own; a slow one misses boards in between, and delays no tick. */
final class Listeners implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

    private final List<Consumer<Board>> listeners = new CopyOnWriteArrayList<>();
    private final AtomicReference<Board> waiting = new AtomicReference<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread made = new Thread(task, "watch-listeners");
        made.setDaemon(true);
        return made;
    });

    Watch.Subscription add(Consumer<Board> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void tell(Board board) {
        if (waiting.getAndSet(board) == null) {
            thread.execute(this::handOver);
        }
    }

    private void handOver() {
        Board board = waiting.getAndSet(null);
        if (board == null) {
            return;
        }
        for (Consumer<Board> listener : listeners) {
            try {
                listener.accept(board);
            } catch (RuntimeException e) {
                LOG.warn("a listener failed on the board of {}", board.at(), e);
            }
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
