package bagward.demo;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttException;

/**
 * Waits for the answers to a batch. Told by the client's callback, since only then has the client taken the message out
 * of its count of those in flight; a token that is complete may still be in it.
 */
final class BatchOutcome implements IMqttActionListener {
    private final CountDownLatch open;
    private final AtomicReference<Optional<Throwable>> failure = new AtomicReference<>(Optional.empty());

    BatchOutcome(int messages) {
        this.open = new CountDownLatch(messages);
    }

    @Override
    public void onSuccess(IMqttToken token) {
        open.countDown();
    }

    @Override
    public void onFailure(IMqttToken token, Throwable cause) {
        failure.set(Optional.of(cause));
        open.countDown();
    }

    /**
     * Returns when every message was taken.
     *
     * @throws MqttException if one was refused, or the time is over
     */
    void await(long millis) throws MqttException, InterruptedException {
        if (!open.await(millis, TimeUnit.MILLISECONDS)) {
            throw new MqttException(MqttException.REASON_CODE_CLIENT_TIMEOUT);
        }
        Optional<Throwable> cause = Objects.requireNonNull(failure.get());
        if (cause.isPresent()) {
            throw new MqttException(cause.get());
        }
    }
}
