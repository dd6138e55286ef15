package bagward.collector;

import bagward.collector.payload.TopicFilter;
import bagward.store.SubscriptionStore;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What one session is subscribed to at the broker, beside what is configured for it. On disk there may be more than is
 * true, never less. Safe for use by several threads.
 */
final class Subscriptions {
    private final SubscriptionStore store;
    private final String broker;
    private final Lane lane;
    private Set<TopicFilter> held;

    /**
     * @param broker what tells the broker from others
     * @param held what the session is subscribed to, or is to be as soon as it is connected
     */
    Subscriptions(SubscriptionStore store, String broker, Lane lane, Set<TopicFilter> held) {
        this.store = store;
        this.broker = broker;
        this.lane = lane;
        this.held = new LinkedHashSet<>(held);
    }

    /** Notes on disk what is asked for with the first connection. */
    void note() {
        store.hold(broker, lane.clientId(), texts(held()));
    }

    synchronized Set<TopicFilter> held() {
        return Set.copyOf(held);
    }

    /** What it holds and is not configured to. */
    synchronized Set<TopicFilter> leaving() {
        Set<TopicFilter> leaving = new LinkedHashSet<>(held);
        lane.filters().forEach(leaving::remove);
        return leaving;
    }

    /** What it is configured to hold and does not yet. */
    synchronized Set<TopicFilter> missing() {
        Set<TopicFilter> missing = new LinkedHashSet<>(lane.filters());
        missing.removeAll(held);
        return missing;
    }

    /** Before filters are asked for at the broker. */
    void asking(Collection<TopicFilter> filters) {
        store.hold(broker, lane.clientId(), texts(filters));
    }

    /** After the broker granted filters. */
    synchronized void granted(Collection<TopicFilter> filters) {
        held.addAll(filters);
    }

    /** After the broker ended filters. */
    void ended(Collection<TopicFilter> filters) {
        synchronized (this) {
            held.removeAll(filters);
        }
        store.letGo(broker, lane.clientId(), texts(filters));
    }

    /** After the session was ended at the broker. */
    void endedSession() {
        store.end(broker, lane.clientId());
    }

    private static List<String> texts(Collection<TopicFilter> filters) {
        return filters.stream().map(TopicFilter::text).toList();
    }
}
