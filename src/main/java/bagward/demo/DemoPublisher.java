package bagward.demo;

import bagward.collector.BrokerLink;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Plays the demo into a broker: first the season and the nine days of history as fast as the broker takes them, while the clock
 * stands; then it releases the clock and goes on live with it, until it is closed. A broker that is away is tried again.
 */
public final class DemoPublisher implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DemoPublisher.class);
    private static final Duration LOOK_AGAIN = Duration.ofMillis(200);
    private static final Duration RETRY = Duration.ofMillis(500);

    private final BrokerLink broker;
    private final DemoFeed feed;
    private final DemoClock clock;
    private final DemoProgress progress;
    private final CountDownLatch historyDone = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Thread thread;
    private DemoMessage pending;

    /**
     * A publisher that does nothing yet.
     *
     * @param broker where to publish
     * @param feed a fresh feed
     * @param clock a standing clock; released when the history is out
     * @param progress told about the history
     */
    public DemoPublisher(BrokerLink broker, DemoFeed feed, DemoClock clock, DemoProgress progress) {
        this.broker = broker;
        this.feed = feed;
        this.clock = clock;
        this.progress = progress;
        this.pending = feed.next();
        this.thread = new Thread(this::run, "demo-publisher");
        this.thread.setDaemon(true);
    }

    /** Begins to publish on a thread of its own. */
    public void start() {
        thread.start();
    }

    /**
     * Waits until the broker has taken the history.
     *
     * @param patience longest wait in real time
     * @return whether it has
     * @throws InterruptedException if the wait was interrupted
     */
    public boolean awaitHistory(Duration patience) throws InterruptedException {
        return historyDone.await(patience.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Stops publishing; returns within a few seconds. */
    @Override
    public void close() {
        closed.countDown();
        try {
            thread.join(3000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try (BatchSender sender = new BatchSender(broker)) {
            publishHistory(sender);
            if (!isClosed()) {
                clock.release();
                historyDone.countDown();
                publishLive(sender);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (MqttException e) {
            LOG.warn("the demo cannot publish to {}: {}", broker.url(), e.getMessage());
        }
    }

    private void publishHistory(BatchSender sender) throws InterruptedException {
        long sent = 0;
        double whole = Duration.between(DemoSeason.BEGINS, DemoStation.NOW).toMillis();
        while (pending.at().isBefore(DemoStation.NOW) && !isClosed()) {
            List<DemoMessage> batch = takeBefore(DemoStation.NOW);
            sendUntilTaken(sender, batch);
            sent += batch.size();
            double done = Duration.between(DemoSeason.BEGINS, pending.at()).toMillis() / whole;
            progress.published(sent, Math.min(1, done));
        }
    }

    private void publishLive(BatchSender sender) throws InterruptedException {
        while (!isClosed()) {
            List<DemoMessage> due = takeBefore(clock.instant());
            if (due.isEmpty()) {
                sleep(shorter(clock.realTimeUntil(pending.at()).plusMillis(1), LOOK_AGAIN));
            } else {
                sendUntilTaken(sender, due);
            }
        }
    }

    private void sendUntilTaken(BatchSender sender, List<DemoMessage> batch) throws InterruptedException {
        while (!isClosed()) {
            try {
                sender.send(batch);
                return;
            } catch (MqttException e) {
                LOG.warn(
                        "the broker at {} did not take the demo's messages, trying again: {}",
                        broker.url(),
                        e.getMessage());
                sleep(RETRY);
            }
        }
    }

    private List<DemoMessage> takeBefore(Instant end) {
        List<DemoMessage> batch = new ArrayList<>();
        while (batch.size() < BatchSender.LARGEST && pending.at().isBefore(end)) {
            batch.add(pending);
            pending = feed.next();
        }
        return batch;
    }

    private boolean isClosed() {
        return closed.getCount() == 0;
    }

    /** Sleeps, but wakes at once when the publisher is closed. */
    private void sleep(Duration time) throws InterruptedException {
        if (closed.await(time.toMillis(), TimeUnit.MILLISECONDS)) {
            LOG.debug("closed while waiting");
        }
    }

    private static Duration shorter(Duration one, Duration other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
