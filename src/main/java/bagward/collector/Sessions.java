package bagward.collector;

import bagward.collector.payload.TopicFilter;
import bagward.store.SubscriptionStore;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/** All lasting sessions at the broker: those that are configured, and those of before that are not empty yet. */
final class Sessions {
    private final List<Session> all = new CopyOnWriteArrayList<>();
    private final List<Session> wanted;

    /**
     * Sessions that are not connected before {@link #start}.
     *
     * @param store what they were subscribed to before
     * @param receiver takes the messages, on the clients' threads
     * @throws bagward.store.StoreException if the store cannot be asked
     */
    Sessions(
            BrokerSettings broker,
            List<Lane> lanes,
            SubscriptionStore store,
            Clock clock,
            BiConsumer<Session, Arrival> receiver) {
        Map<Lane, Set<TopicFilter>> begin = begin(lanes, held(store, broker.name()));
        begin.forEach((lane, filters) -> all.add(new Session(
                broker.link(), lane, new Subscriptions(store, broker.name(), lane, filters), clock, receiver)));
        this.wanted = List.copyOf(all.subList(0, lanes.size()));
    }

    private static Map<String, Set<TopicFilter>> held(SubscriptionStore store, String broker) {
        Map<String, Set<TopicFilter>> held = new LinkedHashMap<>();
        store.held(broker)
                .forEach((client, filters) ->
                        held.put(client, filters.stream().map(TopicFilter::new).collect(Collectors.toSet())));
        return held;
    }

    /**
     * What each session begins with: what it had, and of what is configured for it all that no session has to give up first.
     * A program that did not note its subscriptions yet had them all in the main session.
     */
    static Map<Lane, Set<TopicFilter>> begin(List<Lane> lanes, Map<String, Set<TopicFilter>> held) {
        Map<Lane, Set<TopicFilter>> begin = new LinkedHashMap<>();
        lanes.forEach(lane -> begin.put(lane, new LinkedHashSet<>(held.getOrDefault(lane.clientId(), Set.of()))));
        Set<String> known = lanes.stream().map(Lane::clientId).collect(Collectors.toSet());
        held.forEach((client, filters) -> {
            if (!known.contains(client)) {
                begin.put(Lane.over(client), filters);
            }
        });
        if (held.isEmpty()) {
            begin.put(
                    lanes.get(0),
                    lanes.stream()
                            .flatMap(lane -> lane.filters().stream())
                            .collect(Collectors.toCollection(LinkedHashSet::new)));
        }
        List<TopicFilter> leaving = new ArrayList<>();
        begin.forEach((lane, filters) ->
                filters.stream().filter(f -> !lane.filters().contains(f)).forEach(leaving::add));
        lanes.forEach(lane -> lane.filters().stream()
                .filter(f -> leaving.stream().noneMatch(f::overlaps))
                .forEach(f -> begin.getOrDefault(lane, Set.of()).add(f)));
        return begin;
    }

    /** The list itself; a session that is ended is taken off it. */
    List<Session> all() {
        return all;
    }

    Collection<String> clients() {
        return all.stream().map(s -> s.lane().clientId()).toList();
    }

    void start() {
        all.forEach(Session::start);
    }

    /** Ends all connections, side by side, since each takes a moment. */
    void stop() {
        all.parallelStream().forEach(Session::stop);
    }

    /** Whether all that is configured is heard. */
    boolean connected() {
        return wanted.stream().allMatch(s -> s.connector().connected() && heard(s.missing()));
    }

    /** Whether filters that wait to be moved come by other sessions meanwhile. */
    private boolean heard(Set<TopicFilter> missing) {
        return missing.stream()
                .allMatch(filter ->
                        all.stream().flatMap(s -> s.leaving().stream()).anyMatch(leaving -> leaving.covers(filter)));
    }

    /** Why they are not all connected. */
    String trouble() {
        return wanted.stream()
                .filter(s -> !s.connector().connected())
                .map(s -> (all.size() > 1 ? s.lane().name() + ": " : "")
                        + s.connector().trouble())
                .findFirst()
                .orElse("not everything is subscribed yet");
    }

    /** Connections made so far. */
    long connections() {
        return all.stream().mapToLong(s -> s.connector().connections()).sum();
    }

    /** Sends a message at quality 0 by the session that listens to its topic, if that is connected. */
    void send(String topic, byte[] payload) {
        serving(topic).ifPresent(session -> session.connector().send(topic, payload));
    }

    private Optional<Session> serving(String topic) {
        return all.stream()
                .filter(s -> s.held().stream().anyMatch(f -> f.matches(topic)))
                .findFirst();
    }
}
