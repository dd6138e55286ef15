package bagward.site;

import bagward.alarm.Priority;
import bagward.board.AlarmView;
import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Told;
import bagward.notify.ChannelState;
import bagward.notify.DeliveryDesk;
import bagward.store.Delivery;
import bagward.watch.Watch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Deliveries made by hand: a mail address that works and a webhook that does not. */
final class SampleDeliveries implements DeliveryDesk {
    static final String TOKEN = "7-1800000000-abcdefghijklmnopqrstuv";

    private static final ChannelName MAIL = new ChannelName("ruth-mail");
    private static final ChannelName HOOK = new ChannelName("gateway");

    private final Watch watch;
    private final List<String> trials = new ArrayList<>();

    SampleDeliveries(Watch watch) {
        this.watch = watch;
    }

    /** Which trials were asked for. */
    List<String> trials() {
        return trials;
    }

    @Override
    public List<ChannelState> channels() {
        Instant now = watch.board().at();
        return List.of(
                new ChannelState(
                        MAIL,
                        "e-mail",
                        "ruth@example.org by mail.example.org",
                        0,
                        Optional.of(now.minusSeconds(600)),
                        Optional.empty(),
                        Optional.empty()),
                new ChannelState(
                        HOOK,
                        "webhook",
                        "https://gateway.example.org",
                        3,
                        Optional.empty(),
                        Optional.of("https://gateway.example.org answers 503: <not> now"),
                        Optional.of(now.minusSeconds(1800))));
    }

    @Override
    public List<Delivery> newest(int most) {
        Instant now = watch.board().at();
        Parcel parcel = new Parcel.Letter(message());
        return List.of(
                new Delivery(7, parcel, HOOK, Delivery.State.WAITING, 4, now.plusSeconds(60), now, "answers 503"),
                new Delivery(7, parcel, MAIL, Delivery.State.HANDED_OVER, 0, now, now, ""));
    }

    @Override
    public boolean tryOut(ChannelName channel, String by) {
        trials.add(channel + " by " + by);
        return true;
    }

    @Override
    public Optional<Message> answered(String token) {
        return token.equals(TOKEN) ? Optional.of(message()) : Optional.empty();
    }

    @Override
    public List<String> signsOfLife() {
        return List.of("Sign of life on bagward/alive every 30 s: connected.");
    }

    private Message message() {
        List<Told> tells = watch.board().alarms().stream()
                .limit(2)
                .map(AlarmView::alarm)
                .map(alarm ->
                        new Told("Ruth Öst", alarm.key(), alarm.raisedAt().orElse(Instant.EPOCH), Told.News.RAISED, 1))
                .toList();
        return new Message(
                "raised-1", watch.board().at(), "Ruth Öst", Priority.HIGH, "2 bags need you", "…", tells, Set.of(MAIL));
    }
}
