package bagward.collector;

import bagward.fault.BagwardException;
import bagward.store.StoreException;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps a connection to the broker: tries again with growing waits, and looks every second whether the connection still
 * stands, whatever the client library says or forgets to say.
 */
final class Connector {
    private static final Logger LOG = LoggerFactory.getLogger(Connector.class);
    private static final Duration LOOK = Duration.ofSeconds(1);
    private static final Duration CLOSING = Duration.ofSeconds(25);

    private final BrokerLink link;
    private final Connection.Plan plan;
    private final Clock clock;
    private final Backoff backoff;
    private final Thread thread;
    private final AtomicLong connections = new AtomicLong();
    private volatile @Nullable Connection connection;
    private volatile String trouble = "not connected yet";
    private final CountDownLatch stop = new CountDownLatch(1);

    Connector(BrokerLink link, Connection.Plan plan, Clock clock, Backoff backoff) {
        this.link = link;
        this.plan = plan;
        this.clock = clock;
        this.backoff = backoff;
        this.thread = new Thread(this::run, "connect " + plan.clientId());
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    boolean connected() {
        Connection now = connection;
        return now != null && now.alive();
    }

    /**
     * The connection.
     *
     * @throws BrokerException if there is none
     */
    Connection connection() {
        Connection now = connection;
        if (now == null || !now.alive()) {
            throw new BrokerException(trouble, null);
        }
        return now;
    }

    /** Why there is no connection; meaningless while there is one. */
    String trouble() {
        return trouble;
    }

    long connections() {
        return connections.get();
    }

    /** Sends a message at quality 0 if there is a connection. */
    void send(String topic, byte[] payload) {
        Connection now = connection;
        if (now != null && now.alive()) {
            now.send(topic, payload);
        }
    }

    /** Ends the present connection and makes a new one, upon which the broker sends again what was not acknowledged. */
    void renew() {
        Connection now = connection;
        if (now != null) {
            now.abandon();
        }
    }

    void stop() {
        // no interrupt: it would leave a client behind that is just connecting
        stop.countDown();
        renew();
        try {
            thread.join(CLOSING.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        int failures = 0;
        try {
            while (!stopping()) {
                try {
                    connect();
                    failures = 0;
                    hold();
                } catch (BrokerException | StoreException e) {
                    failures++;
                    said(e, failures);
                    pause(backoff.after(failures));
                }
            }
        } catch (InterruptedException e) {
            LOG.debug("Asked to stop");
        }
    }

    private boolean stopping() {
        return stop.getCount() == 0;
    }

    private void connect() {
        Connection opened = Connection.open(link, plan, clock, connections.get() == 0);
        connection = opened;
        connections.incrementAndGet();
        LOG.info("Connected to the broker at {} as {}", link.url(), plan.clientId());
    }

    private void hold() throws InterruptedException {
        Connection held = connection;
        if (held == null) {
            return;
        }
        try {
            while (!stopping() && held.alive()) {
                held.awaitLoss(LOOK);
            }
        } finally {
            trouble = "the connection to " + link.url() + " was lost";
            held.close();
        }
    }

    private void said(BagwardException e, int failures) {
        trouble = String.valueOf(e.getMessage());
        if (failures == 1) {
            LOG.warn("{}; trying again", trouble);
        } else {
            LOG.debug("{}; try {}", trouble, failures);
        }
    }

    private void pause(Duration wait) throws InterruptedException {
        if (stop.await(wait.toMillis(), TimeUnit.MILLISECONDS)) {
            LOG.debug("Asked to stop");
        }
    }
}
