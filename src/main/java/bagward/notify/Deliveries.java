package bagward.notify;

import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Outbox;
import bagward.message.Parcel;
import bagward.message.Sent;
import bagward.store.Delivery;
import bagward.store.OutboxStore;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;

/** The running deliveries: a postman for each channel, each on a thread of its own, so that none waits for another. */
public final class Deliveries implements Outbox, DeliveryDesk, AutoCloseable {
    /** A channel that fails for longer is a fault of the station's health. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final Parts parts;
    private final Map<ChannelName, Desk> desks = new LinkedHashMap<>();

    /**
     * What deliveries work with.
     *
     * @param clock the station's clock
     * @param outbox the outbox on disk
     * @param station name of the station
     * @param zone zone of times for people
     * @param channels ways to deliver
     * @param followers channels that get every line of the alarm journal
     * @param pages address under which people reach the pages
     * @param links addresses that confirm alarms
     * @param signs signs of life, for pages
     * @param retry when what failed is tried again
     * @param random stretches the waits
     */
    public record Parts(
            Clock clock,
            OutboxStore outbox,
            String station,
            ZoneId zone,
            List<Channel> channels,
            Set<ChannelName> followers,
            Optional<URI> pages,
            AnswerLinks links,
            SignsOfLife signs,
            RetryPlan retry,
            RandomGenerator random) {
        /** Copies the collections. */
        public Parts {
            channels = List.copyOf(channels);
            followers = Set.copyOf(followers);
        }
    }

    private record Desk(Channel channel, Round round, Postman postman) {}

    /** Deliveries that are not started yet; what waits for channels that are gone is given up. */
    public Deliveries(Parts parts) {
        this.parts = parts;
        for (Channel channel : parts.channels()) {
            Round round =
                    new Round(parts.outbox(), channel, this::outgoing, parts.retry(), parts.random(), parts.clock());
            Postman postman = new Postman(channel.name().value(), round, parts.clock());
            desks.put(channel.name(), new Desk(channel, round, postman));
        }
        parts.outbox().giveUpExcept(desks.keySet(), now());
        parts.outbox().forgetOld(now());
    }

    /** Starts to deliver. */
    public void start() {
        desks.values().forEach(desk -> desk.postman().start());
    }

    @Override
    public void put(List<Message> messages) {
        if (!messages.isEmpty()) {
            parts.outbox().put(messages);
            ring();
        }
    }

    @Override
    public Sent sent() {
        return parts.outbox().sent();
    }

    /** Takes what was written into the alarm journal since the last call. */
    public void takeJournal() {
        if (parts.outbox().takeJournal(parts.followers(), now()) > 0) {
            ring();
        }
    }

    /** Forgets what is too old to be of use. */
    public void forgetOld() {
        parts.outbox().forgetOld(now());
    }

    @Override
    public List<ChannelState> channels() {
        List<ChannelState> states = new ArrayList<>();
        desks.forEach((name, desk) -> states.add(new ChannelState(
                name,
                desk.channel().kind(),
                desk.channel().address(),
                parts.outbox().waitingCount(name),
                parts.outbox().lastHandedOver(name).map(Delivery::changedAt),
                desk.round().trouble().map(Round.Trouble::says),
                desk.round().trouble().map(Round.Trouble::since))));
        return states;
    }

    @Override
    public List<Delivery> newest(int most) {
        return parts.outbox().newest(most);
    }

    @Override
    public boolean tryOut(ChannelName channel, String by) {
        if (!desks.containsKey(channel)) {
            return false;
        }
        parts.outbox().putTrial(new Parcel.Trial(now(), by, channel));
        ring();
        return true;
    }

    @Override
    public Optional<Message> answered(String token) {
        return parts.links()
                .parcel(token, now())
                .flatMap(parts.outbox()::find)
                .flatMap(parcel -> parcel instanceof Parcel.Letter letter
                        ? Optional.of(letter.message())
                        : Optional.<Message>empty());
    }

    @Override
    public List<String> signsOfLife() {
        return parts.signs().says();
    }

    /** What is wrong with channels for longer than two minutes; empty if nothing is. */
    public Optional<String> trouble() {
        List<String> troubles = new ArrayList<>();
        desks.forEach((name, desk) -> desk.round()
                .trouble()
                .filter(trouble -> trouble.since().plus(PATIENCE).isBefore(now()))
                .ifPresent(trouble -> troubles.add(name + ": " + trouble.says())));
        return troubles.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", troubles));
    }

    private Outgoing outgoing(Delivery delivery) {
        Optional<URI> answer = delivery.parcel() instanceof Parcel.Letter letter
                        && !letter.message().tells().isEmpty()
                ? parts.pages().map(pages -> parts.links().address(pages, delivery.number(), now()))
                : Optional.empty();
        return new Outgoing(delivery.parcel(), parts.station(), parts.zone(), answer);
    }

    private Instant now() {
        return parts.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private void ring() {
        desks.values().forEach(desk -> desk.postman().ring());
    }

    @Override
    public void close() {
        desks.values().parallelStream().forEach(desk -> desk.postman().close());
        desks.values().forEach(desk -> desk.channel().close());
    }
}
