package bagward.notify;

import bagward.alarm.AlarmKey;
import bagward.store.Delivery;
import bagward.store.OutboxStore;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Hands over what waits for one channel. The order is kept for each alarm: a parcel waits behind an earlier one that is
 * about the same alarm, and for nothing else, so that one that is refused does not hold up the others.
 */
final class Round {
    private static final Logger LOG = LoggerFactory.getLogger(Round.class);
    private static final int MOST = 200;
    private static final int LONGEST_TROUBLE = 300;

    private final OutboxStore outbox;
    private final Channel channel;
    private final Function<Delivery, Outgoing> outgoing;
    private final RetryPlan plan;
    private final RandomGenerator random;
    private final Clock clock;
    /** Taken by the other side, but not noted on disk yet: not to be handed over again. */
    private final Set<Long> unnoted = new HashSet<>();

    private int failures;
    private Instant closedUntil = Instant.MIN;
    private volatile Optional<Trouble> trouble = Optional.empty();

    /**
     * Why a channel does not work.
     *
     * @param since when it first failed, without a success in between
     * @param says the newest reason
     */
    record Trouble(Instant since, String says) {}

    Round(
            OutboxStore outbox,
            Channel channel,
            Function<Delivery, Outgoing> outgoing,
            RetryPlan plan,
            RandomGenerator random,
            Clock clock) {
        this.outbox = outbox;
        this.channel = channel;
        this.outgoing = outgoing;
        this.plan = plan;
        this.random = random;
        this.clock = clock;
    }

    /** Why the channel does not work; empty if its last try went well. */
    Optional<Trouble> trouble() {
        return trouble;
    }

    /**
     * Tries all that is due.
     *
     * @return when something is due next; empty if nothing waits
     */
    Optional<Instant> pass() {
        List<Delivery> waiting = outbox.waiting(channel.name(), MOST);
        if (waiting.isEmpty()) {
            return Optional.empty();
        }
        if (clock.instant().isBefore(closedUntil)) {
            return Optional.of(closedUntil);
        }
        Set<AlarmKey> held = new HashSet<>();
        Instant next = Instant.MAX;
        for (Delivery delivery : waiting) {
            if (delivery.parcel().alarms().stream().anyMatch(held::contains)) {
                held.addAll(delivery.parcel().alarms());
                continue;
            }
            Optional<Instant> later =
                    delivery.nextTry().isAfter(clock.instant()) ? Optional.of(delivery.nextTry()) : tried(delivery);
            if (later.isPresent()) {
                held.addAll(delivery.parcel().alarms());
                next = later.get().isBefore(next) ? later.get() : next;
            }
            if (clock.instant().isBefore(closedUntil)) {
                return Optional.of(closedUntil);
            }
        }
        return next.equals(Instant.MAX) ? again(waiting.size()) : Optional.of(next);
    }

    private Optional<Instant> again(int seen) {
        return seen == MOST ? Optional.of(clock.instant()) : Optional.empty();
    }

    /** Tries one; empty if it was handed over or given up, else when it is tried again. */
    private Optional<Instant> tried(Delivery delivery) {
        try {
            if (!unnoted.contains(delivery.number())) {
                channel.hand(outgoing.apply(delivery));
            }
        } catch (DeliveryException e) {
            return failed(delivery, e);
        }
        unnoted.add(delivery.number());
        outbox.handedOver(delivery, clock.instant());
        unnoted.remove(delivery.number());
        failures = 0;
        trouble = Optional.empty();
        return Optional.empty();
    }

    private Optional<Instant> failed(Delivery delivery, DeliveryException e) {
        Instant now = clock.instant();
        String says = shortened(String.valueOf(e.getMessage()));
        note(delivery, now, says);
        if (e.refused()) {
            if (delivery.parcel().at().plus(plan.giveUpAfter()).isBefore(now)) {
                outbox.givenUp(delivery, now, says);
                return Optional.empty();
            }
            return Optional.of(put(delivery, now, plan.wait(plan.refused(), delivery.tries() + 1, random), says));
        }
        failures++;
        closedUntil = now.plus(plan.wait(plan.channel(), failures, random));
        return Optional.of(put(delivery, now, plan.wait(plan.parcel(), delivery.tries() + 1, random), says));
    }

    private Instant put(Delivery delivery, Instant now, Duration wait, String says) {
        Instant next = now.plus(wait);
        outbox.failed(delivery, now, next, says);
        return next;
    }

    private void note(Delivery delivery, Instant now, String says) {
        if (trouble.isEmpty()) {
            LOG.warn(
                    "channel {} did not take {}: {}; it is tried again",
                    channel.name(),
                    delivery.parcel().id(),
                    says);
        }
        trouble = Optional.of(new Trouble(trouble.map(Trouble::since).orElse(now), says));
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() <= LONGEST_TROUBLE ? line : line.substring(0, LONGEST_TROUBLE) + "…";
    }
}
