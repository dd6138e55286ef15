package bagward.notify;

import bagward.message.ChannelName;
import bagward.message.Parcel;

/** Publishes at the station's broker, at quality 1: lines of the journal under {@code event}, the rest under the channel's name. */
final class MqttChannel implements Channel {
    private final ChannelName name;
    private final MqttLine line;

    MqttChannel(ChannelName name, MqttLine line) {
        this.name = name;
        this.line = line;
    }

    @Override
    public ChannelName name() {
        return name;
    }

    @Override
    public String kind() {
        return "MQTT";
    }

    @Override
    public String address() {
        return "topics under " + line.topic("");
    }

    @Override
    public void hand(Outgoing outgoing) {
        boolean change = outgoing.parcel() instanceof Parcel.Change;
        line.publish(line.topic(change ? "event" : "message/" + name), OutgoingJson.bytes(outgoing), false);
    }
}
