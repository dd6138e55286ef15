package bagward.collector;

import bagward.collector.payload.TopicFilter;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;

/** A lasting session at the broker, which keeps for it what comes while we are away. */
final class Session {
    private static final Backoff RECONNECT = new Backoff(Duration.ofMillis(250), Duration.ofSeconds(30));

    private final BrokerLink link;
    private final Lane lane;
    private final Subscriptions subscriptions;
    private final Connector connector;
    private final AtomicBoolean leftWithBroker = new AtomicBoolean();

    /**
     * A session that is not connected before {@link #start}.
     *
     * @param receiver takes its messages, on the client's thread
     */
    Session(
            BrokerLink link,
            Lane lane,
            Subscriptions subscriptions,
            Clock clock,
            BiConsumer<Session, Arrival> receiver) {
        this.link = link;
        this.lane = lane;
        this.subscriptions = subscriptions;
        this.connector = new Connector(
                link,
                new Connection.Plan(lane.clientId(), this::greeted, 1, true, arrival -> receiver.accept(this, arrival)),
                clock,
                RECONNECT);
    }

    void start() {
        subscriptions.note();
        connector.start();
    }

    void stop() {
        connector.stop();
    }

    /** Where a broker kept nothing of the session, there is nothing to be moved away from it either. */
    private List<TopicFilter> greeted(boolean kept) {
        Set<TopicFilter> leaving = subscriptions.leaving();
        if (!kept && !leaving.isEmpty()) {
            subscriptions.ended(leaving);
        }
        return Lanes.widest(new ArrayList<>(subscriptions.held()));
    }

    Lane lane() {
        return lane;
    }

    Connector connector() {
        return connector;
    }

    Set<TopicFilter> held() {
        return subscriptions.held();
    }

    Set<TopicFilter> leaving() {
        return subscriptions.leaving();
    }

    Set<TopicFilter> missing() {
        return subscriptions.missing();
    }

    /**
     * Subscribes to further filters, and waits for the answer.
     *
     * @throws BrokerException if there is no connection, or the broker refuses
     * @throws bagward.store.StoreException if it cannot be noted
     */
    void subscribe(Collection<TopicFilter> filters) {
        if (!filters.isEmpty()) {
            subscriptions.asking(filters);
            connector.connection().subscribe(List.copyOf(filters));
            subscriptions.granted(filters);
        }
    }

    /**
     * Ends filters, and waits for the answer. What the broker has of them already may still come.
     *
     * @throws BrokerException if there is no connection
     * @throws bagward.store.StoreException if it cannot be noted
     */
    void unsubscribe(Collection<TopicFilter> filters) {
        if (!filters.isEmpty()) {
            connector.connection().unsubscribe(List.copyOf(filters));
            subscriptions.ended(filters);
        }
    }

    /**
     * Ends the session at the broker, with whatever the broker keeps for it.
     *
     * @throws BrokerException if the broker cannot be reached; it can be tried again
     * @throws bagward.store.StoreException if it cannot be noted
     */
    void end() {
        connector.stop();
        Connection.forget(link, lane.clientId());
        subscriptions.endedSession();
    }

    /** Notes that there was no room for a message, which the broker therefore still has. */
    void leave() {
        leftWithBroker.set(true);
    }

    /** Whether messages were left with the broker, which it does not send again on this connection. */
    boolean left() {
        return leftWithBroker.get();
    }

    /** A new connection makes the broker send what was left with it. */
    void fetchLeft() {
        if (leftWithBroker.getAndSet(false)) {
            connector.renew();
        }
    }
}
