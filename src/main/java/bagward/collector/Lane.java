package bagward.collector;

import bagward.collector.payload.TopicFilter;
import java.util.List;

/**
 * Topics that share a session at the broker, and thereby a queue there.
 *
 * @param clientId name of the session at the broker
 * @param name what it is for, for people
 * @param filters what is listened to, none covered by another
 */
record Lane(String clientId, String name, List<TopicFilter> filters) {
    Lane {
        filters = List.copyOf(filters);
    }

    /** The one for sensors that send for themselves. */
    static Lane main(String clientId, List<TopicFilter> filters) {
        return new Lane(clientId, "main session", filters);
    }

    /** One that is not configured any more. */
    static Lane over(String clientId) {
        return new Lane(clientId, "session " + clientId + " of before", List.of());
    }

    /** One for gateways. */
    static Lane of(String clientId, List<String> gateways, List<TopicFilter> filters) {
        return new Lane(
                clientId, (gateways.size() == 1 ? "gateway " : "gateways ") + String.join(", ", gateways), filters);
    }
}
