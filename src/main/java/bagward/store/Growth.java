package bagward.store;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongConsumer;

/** Tells every second how long a file that is being written is, until it is closed. */
final class Growth {
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Path file;
    private final LongConsumer told;

    private Growth(Path file, LongConsumer told) {
        this.file = file;
        this.told = told;
    }

    static Growth watch(Path file, LongConsumer told) {
        Growth growth = new Growth(file, told);
        Thread thread = new Thread(growth::run, "look at " + file.getFileName());
        thread.setDaemon(true);
        thread.start();
        return growth;
    }

    private void run() {
        try {
            while (!closed.await(1, TimeUnit.SECONDS)) {
                told.accept(file.toFile().length());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    void close() {
        closed.countDown();
    }
}
