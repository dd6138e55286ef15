package bagward.app;

import java.util.concurrent.CountDownLatch;
import org.slf4j.LoggerFactory;

/** Waits until the process is told to end (Ctrl-C, SIGTERM), then closes everything before it does. */
final class UntilStopped {
    private UntilStopped() {}

    /** Blocks; on the way out closes in the order given. */
    static void await(AutoCloseable... parts) throws InterruptedException {
        CountDownLatch stop = new CountDownLatch(1);
        Thread hook = new Thread(
                () -> {
                    for (AutoCloseable part : parts) {
                        closeQuietly(part);
                    }
                    stop.countDown();
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(hook);
        stop.await();
    }

    private static void closeQuietly(AutoCloseable part) {
        try {
            part.close();
        } catch (Exception e) {
            LoggerFactory.getLogger(UntilStopped.class).warn("a part did not close cleanly", e);
        }
    }
}
