package bagward.collector;

import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.collector.payload.TopicFilter;
import bagward.store.StoreException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Brings what the sessions are subscribed to in line with what is configured. A topic goes from one session to another only
 * when the old one is calm, since a broker may forget what waits for a subscription that ends (Artemis does). A session that
 * is not configured any more is emptied first and then ended. One thread.
 */
final class Mover implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Mover.class);

    private static final Pause EVERY = new Pause(Duration.ofMillis(200), Duration.ofMillis(500));

    /** For so long no batch of a session was full: the broker has nothing more of before. */
    private static final Duration CALM = Duration.ofSeconds(2);

    /** What the broker sent before it ended a subscription is here after this time. */
    private static final Duration ON_THE_WAY = Duration.ofSeconds(2);

    private final List<Session> sessions;
    private final HandOff handOff;
    private final Handover handover;
    private final Clockwork clockwork = Clockwork.resting("move topics", EVERY, this::step);
    private OptionalLong movedNanos = OptionalLong.empty();
    private boolean failing;

    /** @param sessions all of them; those that are ended are taken off the list */
    Mover(List<Session> sessions, HandOff handOff, Handover handover) {
        this.sessions = sessions;
        this.handOff = handOff;
        this.handover = handover;
    }

    void start() {
        if (crashedHalfWay()) {
            handover.open(moves());
        }
        clockwork.start();
    }

    /** Whether two sessions get the same topics, which is so only if an earlier process died while it moved them. */
    private boolean crashedHalfWay() {
        return sessions.stream()
                .anyMatch(old -> sessions.stream()
                        .filter(other -> !other.equals(old))
                        .anyMatch(other -> overlap(old.leaving(), other.held())));
    }

    private void step() {
        try {
            subscribeWhatIsFree();
            if (movedNanos.isPresent()) {
                closeInTime(movedNanos.getAsLong());
            } else if (sessions.stream().anyMatch(s -> !s.leaving().isEmpty())) {
                moveWhenCalm();
            } else {
                handover.close();
                endWhatIsNotNeeded();
            }
            failing = false;
        } catch (BrokerException | StoreException e) {
            if (!failing) {
                LOG.warn("Topics are not moved yet; trying again: {}", e.getMessage());
            }
            failing = true;
        }
    }

    private void subscribeWhatIsFree() {
        for (Session session : sessions) {
            List<TopicFilter> free =
                    session.missing().stream().filter(this::isFree).toList();
            if (!free.isEmpty() && session.connector().connected()) {
                session.subscribe(free);
            }
        }
    }

    private boolean isFree(TopicFilter filter) {
        return sessions.stream().flatMap(s -> s.leaving().stream()).noneMatch(leaving -> leaving.overlaps(filter));
    }

    private void moveWhenCalm() {
        boolean connected = sessions.stream().allMatch(s -> s.connector().connected());
        if (connected && sessions.stream().filter(s -> !s.leaving().isEmpty()).allMatch(this::calm)) {
            handover.open(moves());
            sessions.forEach(s -> s.subscribe(s.missing()));
            sessions.forEach(Mover::letGo);
            movedNanos = OptionalLong.of(System.nanoTime());
        }
    }

    private static void letGo(Session session) {
        Set<TopicFilter> leaving = session.leaving();
        session.unsubscribe(leaving);
        if (!leaving.isEmpty()) {
            LOG.info(
                    "{} topics came by the session {} and do not any more",
                    leaving.size(),
                    session.lane().clientId());
        }
    }

    private void closeInTime(long moved) {
        if (System.nanoTime() - moved > ON_THE_WAY.toNanos()) {
            handover.close();
            movedNanos = OptionalLong.empty();
        }
    }

    private void endWhatIsNotNeeded() {
        List<Session> over = sessions.stream()
                .filter(s -> s.lane().filters().isEmpty() && s.held().isEmpty())
                .filter(Predicate.not(s -> s.equals(sessions.get(0))))
                .filter(this::calm)
                .toList();
        for (Session session : over) {
            session.end();
            sessions.remove(session);
            LOG.info(
                    "The session {} is not needed any more and was ended",
                    session.lane().clientId());
        }
    }

    private boolean calm(Session session) {
        return session.connector().connected()
                && session.connector().connection().age().compareTo(CALM.plusSeconds(1)) > 0
                && !session.left()
                && handOff.calm(session.lane().clientId(), CALM);
    }

    private List<Handover.Move> moves() {
        List<Handover.Move> moves = new ArrayList<>();
        sessions.forEach(session -> session.leaving()
                .forEach(filter ->
                        moves.add(new Handover.Move(filter, session.lane().clientId()))));
        return moves;
    }

    private static boolean overlap(Set<TopicFilter> some, Set<TopicFilter> others) {
        return some.stream().anyMatch(one -> others.stream().anyMatch(one::overlaps));
    }

    @Override
    public void close() {
        clockwork.close();
    }
}
