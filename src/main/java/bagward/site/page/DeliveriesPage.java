package bagward.site.page;

import bagward.message.Parcel;
import bagward.notify.ChannelState;
import bagward.site.view.Words;
import bagward.store.Delivery;
import java.time.ZoneId;
import java.util.List;

/**
 * How messages reach people.
 *
 * @param channels every channel
 * @param deliveries the newest deliveries
 * @param signs signs of life, one sentence each
 */
public record DeliveriesPage(List<Channel> channels, List<Line> deliveries, List<String> signs) {
    /**
     * A channel.
     *
     * @param name its name
     * @param kind what it is
     * @param address where it leads
     * @param state how it stands
     * @param failing whether its last try failed
     * @param last when it last took something
     */
    public record Channel(String name, String kind, String address, String state, boolean failing, String last) {}

    /**
     * A delivery.
     *
     * @param time when it was put
     * @param what its subject
     * @param whom person or program
     * @param channel name of the channel
     * @param state how it stands
     * @param failing whether its last try failed
     */
    public record Line(String time, String what, String whom, String channel, String state, boolean failing) {}

    /** The page. */
    public static DeliveriesPage of(
            List<ChannelState> channels, List<Delivery> deliveries, List<String> signs, ZoneId zone) {
        return new DeliveriesPage(
                channels.stream().map(state -> channel(state, zone)).toList(),
                deliveries.stream().map(delivery -> line(delivery, zone)).toList(),
                signs);
    }

    private static Channel channel(ChannelState state, ZoneId zone) {
        String waiting = state.waiting() == 0 ? "nothing waits" : Words.count(state.waiting(), "waits", "wait");
        String says = state.trouble()
                .map(why -> "Fails since "
                        + state.troubleSince()
                                .map(at -> Words.dayAndClock(at, zone))
                                .orElse("now") + ": " + why + ". " + Words.sentence(waiting) + ".")
                .orElse(Words.sentence(waiting) + ".");
        return new Channel(
                state.name().value(),
                state.kind(),
                state.address(),
                says,
                state.trouble().isPresent(),
                state.lastHandedOver().map(at -> Words.dayAndClock(at, zone)).orElse("never"));
    }

    private static Line line(Delivery delivery, ZoneId zone) {
        boolean failing = delivery.state() == Delivery.State.GIVEN_UP
                || (delivery.state() == Delivery.State.WAITING && delivery.tries() > 0);
        return new Line(
                Words.dayAndClock(delivery.parcel().at(), zone),
                what(delivery.parcel()),
                whom(delivery.parcel()),
                delivery.channel().value(),
                state(delivery, zone),
                failing);
    }

    private static String what(Parcel parcel) {
        if (parcel instanceof Parcel.Letter letter) {
            return letter.message().subject();
        }
        return parcel instanceof Parcel.Change change
                ? "Journal: " + change.event().message()
                : "Trial";
    }

    private static String whom(Parcel parcel) {
        if (parcel instanceof Parcel.Letter letter) {
            return letter.message().person();
        }
        return parcel instanceof Parcel.Trial trial ? "asked for by " + trial.by() : "a program";
    }

    private static String state(Delivery delivery, ZoneId zone) {
        String at = Words.dayAndClock(delivery.changedAt(), zone);
        return switch (delivery.state()) {
            case HANDED_OVER -> "handed over " + at;
            case GIVEN_UP -> "given up " + at + ": " + delivery.trouble();
            case WAITING ->
                delivery.tries() == 0
                        ? "waits"
                        : "tried " + Words.count(delivery.tries(), "time", "times") + ", last " + at + ": "
                                + delivery.trouble() + "; next "
                                + Words.dayAndClock(delivery.nextTry(), zone);
        };
    }
}
