package bagward.collector;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Plays a recorded file into a broker, with the recorded times in the messages, at quality 1. */
public final class Replay {
    private static final Logger LOG = LoggerFactory.getLogger(Replay.class);
    private static final int IN_FLIGHT = 100;
    private static final Duration ANSWER = Duration.ofSeconds(30);

    private final BrokerLink broker;
    private final OptionalDouble speed;
    private final Consumer<Progress> progress;
    private final Semaphore room = new Semaphore(IN_FLIGHT);
    private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

    /**
     * How far it is.
     *
     * @param rows rows sent
     * @param ofRows rows in the file
     * @param messages messages sent
     * @param at recorded time of the last row
     */
    public record Progress(int rows, int ofRows, long messages, Instant at) {}

    /**
     * Prepares a replay.
     *
     * @param broker where it is sent
     * @param speed how many times as fast as recorded; empty for as fast as the broker takes it
     * @param progress told after each row
     */
    public Replay(BrokerLink broker, OptionalDouble speed, Consumer<Progress> progress) {
        this.broker = broker;
        this.speed = speed;
        this.progress = progress;
    }

    /**
     * Plays a file.
     *
     * @return how many messages the broker has acknowledged: all of them
     * @throws bagward.fault.RefusedInputException with every fault by line, before anything is sent
     * @throws BrokerException if the broker cannot be reached or stops taking messages
     * @throws InterruptedException if the thread is interrupted; what was sent stays sent
     */
    public long play(Path csv, ReplayPlan plan) throws InterruptedException {
        List<ReplayRow> rows = ReplayFile.read(csv, plan);
        try (Sender sender = new Sender()) {
            long sent = sendAll(rows, sender);
            if (!room.tryAcquire(IN_FLIGHT, ANSWER.toSeconds(), TimeUnit.SECONDS)) {
                throw new BrokerException("the broker at " + broker.url() + " does not acknowledge", failure.get());
            }
            failIfAny();
            return sent;
        } catch (MqttException e) {
            throw new BrokerException(
                    "the broker at " + broker.url() + " does not take the replay: check that it runs", e);
        }
    }

    private long sendAll(List<ReplayRow> rows, Sender sender) throws MqttException, InterruptedException {
        long sent = 0;
        long began = System.nanoTime();
        for (int i = 0; i < rows.size(); i++) {
            ReplayRow row = rows.get(i);
            pause(began, Duration.between(rows.get(0).at(), row.at()));
            for (ReplayRow.Outgoing message : row.messages()) {
                sender.send(message);
                sent++;
            }
            progress.accept(new Progress(i + 1, rows.size(), sent, row.at()));
        }
        return sent;
    }

    private void pause(long began, Duration sinceFirst) throws InterruptedException {
        if (speed.isPresent()) {
            double due = sinceFirst.toMillis() / speed.getAsDouble();
            TimeUnit.MILLISECONDS.sleep(Math.round(due - (System.nanoTime() - began) / 1e6));
        }
    }

    private void failIfAny() {
        Throwable why = failure.get();
        if (why != null) {
            throw new BrokerException("the broker at " + broker.url() + " refused a message of the replay", why);
        }
    }

    /** The connection of one replay. */
    private final class Sender implements AutoCloseable, IMqttActionListener {
        private final MqttAsyncClient client;

        Sender() throws MqttException {
            client = broker.client("bagward-replay");
            MqttConnectOptions options = broker.connectOptions(false);
            // the library counts a message as in flight for a moment after it has told that it is not
            options.setMaxInflight(2 * IN_FLIGHT);
            try {
                client.connect(options).waitForCompletion(ANSWER.toMillis());
            } catch (MqttException e) {
                client.close(true);
                throw e;
            }
        }

        void send(ReplayRow.Outgoing message) throws MqttException, InterruptedException {
            if (!room.tryAcquire(ANSWER.toSeconds(), TimeUnit.SECONDS)) {
                throw new BrokerException("the broker at " + broker.url() + " does not acknowledge", failure.get());
            }
            failIfAny();
            byte[] payload = message.json().getBytes(java.nio.charset.StandardCharsets.UTF_8);
            client.publish(message.topic(), payload, 1, false, null, this);
        }

        @Override
        public void onSuccess(IMqttToken token) {
            room.release();
        }

        @Override
        public void onFailure(IMqttToken token, Throwable why) {
            failure.compareAndSet(null, why);
            room.release();
        }

        @Override
        public void close() throws MqttException {
            try {
                if (client.isConnected()) {
                    client.disconnect(0).waitForCompletion(1000);
                }
            } catch (MqttException e) {
                LOG.debug("Closing the replay", e);
            } finally {
                client.close(true);
            }
        }
    }
}
