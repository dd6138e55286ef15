package bagward.app;

import java.util.concurrent.CountDownLatch;

/** Closes parts when the process ends, by Ctrl-C, SIGTERM or by itself, at whatever moment that is. */
final class UntilStopped {
    private final Parts parts = new Parts();
    private final CountDownLatch stopped = new CountDownLatch(1);

    private UntilStopped() {}

    /** Begins to look out for the end of the process. */
    static UntilStopped begin() {
        UntilStopped until = new UntilStopped();
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            until.parts.close();
                            until.stopped.countDown();
                        },
                        "stop"));
        return until;
    }

    /** Takes a part that is closed at the end, before those taken earlier, and gives it back. */
    <T extends AutoCloseable> T closing(T part) {
        return parts.add(part);
    }

    /** Blocks until the process is told to end. */
    void await() throws InterruptedException {
        stopped.await();
    }
}
