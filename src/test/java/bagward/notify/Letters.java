package bagward.notify;

import bagward.alarm.AlarmKey;
import bagward.alarm.Priority;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Told;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Messages for tests. */
final class Letters {
    static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");
    static final ChannelName CHANNEL = new ChannelName("ruth-mail");

    private Letters() {}

    /** A message about one bag. */
    static Message about(String tag, String id) {
        return about(tag, id, CHANNEL);
    }

    static Message about(String tag, String id, ChannelName channel) {
        AlarmKey key = new AlarmKey(new RuleId("bag-damp"), new Subject.Bag(new TagCode(tag)));
        return new Message(
                id,
                NOON,
                "Ruth Öst",
                Priority.HIGH,
                "Bag " + tag + " damp: 93 %RH",
                "Bag " + tag + " in Häuschen 2.\n.A line that begins with a point.\nOpen it before noon.",
                List.of(new Told("Ruth Öst", key, NOON, Told.News.RAISED, 1)),
                Set.of(channel));
    }

    static Outgoing outgoing(Message message) {
        return new Outgoing(new Parcel.Letter(message), "Alder Bank", ZoneOffset.UTC, Optional.empty());
    }
}
