package bagward.notify;

import bagward.collector.BrokerLink;
import java.time.Clock;
import java.util.Optional;

/** Signs of life for tests. */
final class Signs {
    private Signs() {}

    /** None. */
    static SignsOfLife none() {
        return new SignsOfLife(
                DeliverySettings.NONE,
                new BrokerLink("tcp://127.0.0.1:1", Optional.empty(), Optional.empty()),
                "test",
                Clock.systemUTC(),
                () -> true);
    }
}
