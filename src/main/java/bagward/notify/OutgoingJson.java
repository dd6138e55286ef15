package bagward.notify;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Told;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;

/** Parcels as programs read them: one JSON object, described in the document on deliveries. */
final class OutgoingJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private OutgoingJson() {}

    /** An empty object. */
    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** The object as UTF-8. */
    static byte[] bytes(Outgoing outgoing) {
        ObjectNode object = object().put("id", outgoing.parcel().id())
                .put("at", outgoing.parcel().at().toString())
                .put("station", outgoing.station());
        Parcel parcel = outgoing.parcel();
        if (parcel instanceof Parcel.Letter letter) {
            letter(object, letter.message());
        } else if (parcel instanceof Parcel.Change change) {
            change(object, change.event());
        } else if (parcel instanceof Parcel.Trial trial) {
            object.put("type", "trial").put("by", trial.by());
        }
        outgoing.answer().ifPresent(link -> object.put("confirm-page", link.toString()));
        return object.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void letter(ObjectNode object, Message message) {
        object.put("type", "message")
                .put("person", message.person())
                .put("priority", Words.of(message.priority()))
                .put("subject", message.subject())
                .put("text", message.text());
        ArrayNode alarms = object.putArray("alarms");
        for (Told told : message.tells()) {
            alarms.add(key(object(), told.alarm())
                    .put("raised-at", told.raisedAt().toString())
                    .put("news", Words.of(told.news())));
        }
    }

    private static void change(ObjectNode object, AlarmEvent event) {
        key(object.put("type", "alarm-change"), event.key())
                .put("from", Words.of(event.from()))
                .put("to", Words.of(event.to()))
                .put("by", event.by())
                .put("text", event.message());
    }

    /** An object with the key of an alarm added. */
    static ObjectNode key(ObjectNode object, AlarmKey key) {
        return object.put("rule", key.rule().value())
                .put("subject", key.subject().key());
    }
}
