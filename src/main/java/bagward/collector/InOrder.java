package bagward.collector;

import bagward.collector.payload.MessageDecoder;
import bagward.collector.sparkplug.Ordered;
import bagward.collector.sparkplug.SparkplugTopic;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Holds Sparkplug B messages back, unacknowledged, until those that their edge node sent before them are there, or have not
 * come in time. Used by one thread.
 */
final class InOrder {
    private final MessageDecoder decoder;
    private final Ordered<Arrival> ordered = new Ordered<>();
    private @Nullable Connection connection;

    InOrder(MessageDecoder decoder) {
        this.decoder = decoder;
    }

    /** The arrivals whose turn has come, those of an older connection first. */
    List<Arrival> turnOf(List<Arrival> arrivals) {
        List<Arrival> turn = new ArrayList<>();
        long nanos = System.nanoTime();
        for (Arrival arrival : arrivals) {
            if (!Objects.equals(connection, arrival.from())) {
                connection = arrival.from();
                turn.addAll(ordered.all());
            }
            Optional<SparkplugTopic> topic = decoder.edgeTopic(arrival.message().topic());
            if (topic.isPresent()) {
                turn.addAll(ordered.take(arrival, topic.get(), arrival.message().bytes(), nanos));
            } else {
                turn.add(arrival);
            }
        }
        turn.addAll(ordered.overdue(nanos));
        return turn;
    }
}
