package bagward.message;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was put into the outbox so far, delivered or not.
 *
 * @param ids ids of messages
 * @param told when each state was told
 */
public record Sent(Set<String> ids, Map<Told, Instant> told) {
    /** Nothing yet. */
    public static final Sent NOTHING = new Sent(Set.of(), Map.of());

    /** Copies the collections. */
    public Sent {
        ids = Set.copyOf(ids);
        told = Map.copyOf(told);
    }

    /** Whether a message of this id was put. */
    public boolean has(String id) {
        return ids.contains(id);
    }

    /** When a state was told; empty if it was not. */
    public Optional<Instant> toldAt(Told state) {
        return Optional.ofNullable(told.get(state));
    }

    /** The same after more messages; what was told keeps its first time. */
    public Sent with(List<Message> messages) {
        Set<String> moreIds = new HashSet<>(ids);
        Map<Told, Instant> more = new HashMap<>(told);
        for (Message message : messages) {
            if (moreIds.add(message.id())) {
                message.tells().forEach(state -> more.putIfAbsent(state, message.at()));
            }
        }
        return new Sent(moreIds, more);
    }
}
