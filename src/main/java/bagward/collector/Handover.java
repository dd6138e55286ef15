package bagward.collector;

import bagward.collector.payload.TopicFilter;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * While topics go from one session to another, both get their messages, so that none is lost; this lets only one of each
 * pair be stored. What comes by the old session passes; what comes by the new one is held, unacknowledged, until the old
 * one gets nothing more, and is then dropped if the same payload came by the old one. Readings with a time of their own would
 * be one row anyway; for the others this matters. Safe for use by several threads.
 */
final class Handover {
    /** A broker with a wide window may send so many; more are not held. */
    private static final int MOST_HELD = 20_000;

    private final Map<Content, Integer> passed = new HashMap<>();
    private final List<Arrival> held = new ArrayList<>();
    private List<Move> moves = List.of();
    private boolean open;

    /**
     * Topics that leave a session.
     *
     * @param filter which
     * @param from client id of the session that had them
     */
    record Move(TopicFilter filter, String from) {}

    private record Content(String topic, ByteBuffer payload) {
        static Content of(Arrival arrival) {
            return new Content(
                    arrival.message().topic(), ByteBuffer.wrap(arrival.message().bytes()));
        }
    }

    /** Begins, or goes on with what was begun. */
    synchronized void open(List<Move> leaving) {
        if (!open) {
            moves = List.copyOf(leaving);
            open = true;
        }
    }

    synchronized boolean isOpen() {
        return open;
    }

    /** Ends: the old sessions have got all that they will get. */
    synchronized void close() {
        open = false;
    }

    /** Of some arrivals those that may be stored now. */
    synchronized List<Arrival> pass(List<Arrival> arrivals) {
        if (!open && held.isEmpty()) {
            return arrivals;
        }
        // what comes between its end and the release stays behind what is held
        List<Arrival> passing = new ArrayList<>();
        for (Arrival arrival : arrivals) {
            String topic = arrival.message().topic();
            String client = arrival.from().clientId();
            List<Move> concerned =
                    moves.stream().filter(m -> m.filter().matches(topic)).toList();
            if (concerned.stream().anyMatch(m -> m.from().equals(client))) {
                passed.merge(Content.of(arrival), 1, Integer::sum);
                passing.add(arrival);
            } else if (concerned.isEmpty() || held.size() >= MOST_HELD) {
                passing.add(arrival);
            } else {
                held.add(arrival);
            }
        }
        return passing;
    }

    /** Once it is closed: what was held and is to be stored; what came by the old session too is acknowledged. */
    synchronized List<Arrival> released() {
        if (open || held.isEmpty()) {
            return List.of();
        }
        List<Arrival> toStore = new ArrayList<>();
        for (Arrival arrival : held) {
            Content content = Content.of(arrival);
            int twins = passed.getOrDefault(content, 0);
            if (twins == 0) {
                toStore.add(arrival);
            } else {
                passed.put(content, twins - 1);
                arrival.acknowledge();
            }
        }
        held.clear();
        passed.clear();
        return toStore;
    }
}
