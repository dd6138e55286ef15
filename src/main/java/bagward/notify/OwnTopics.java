package bagward.notify;

import bagward.collector.payload.TopicFilter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The topics on which Bagward itself speaks at the station's broker. */
public final class OwnTopics {
    private OwnTopics() {}

    /** Filters that fit them; none if nothing is published. */
    public static List<TopicFilter> of(Optional<DeliverySettings.Mqtt> mqtt) {
        return mqtt.stream()
                .flatMap(settings -> Stream.of("alive", "alarm/#", "house/#", "event", "message/#")
                        .map(rest -> new TopicFilter(settings.topic() + "/" + rest)))
                .toList();
    }
}
