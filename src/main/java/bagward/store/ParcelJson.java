package bagward.store;

import bagward.alarm.Priority;
import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Told;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Parcels as documents. */
final class ParcelJson {
    private ParcelJson() {}

    /** The document of a parcel. */
    static String write(Parcel parcel) {
        if (parcel instanceof Parcel.Letter letter) {
            return letter(letter.message());
        }
        if (parcel instanceof Parcel.Change change) {
            ObjectNode document = Json.document("change").put("number", change.number());
            document.set("event", Json.parse(AlarmJson.write(change.event())));
            return document.toString();
        }
        if (parcel instanceof Parcel.Trial trial) {
            return Json.document("trial")
                    .put("at", trial.at().toString())
                    .put("by", trial.by())
                    .put("channel", trial.channel().value())
                    .toString();
        }
        throw new IllegalStateException("no document is known for " + parcel.getClass());
    }

    /** The parcel of a document. */
    static Parcel read(String text) {
        JsonNode document = Json.parse(text);
        String kind = Json.text(document, "kind");
        return switch (kind) {
            case "letter" -> new Parcel.Letter(message(document));
            case "change" ->
                new Parcel.Change(
                        document.path("number").asLong(),
                        AlarmJson.readEvent(document.path("event").toString()));
            case "trial" ->
                new Parcel.Trial(
                        Json.instant(document, "at"),
                        Json.text(document, "by"),
                        new ChannelName(Json.text(document, "channel")));
            default ->
                throw new StoreException("the store holds a parcel of the unknown kind '" + kind
                        + "': use the newer Bagward that wrote it");
        };
    }

    private static String letter(Message message) {
        ObjectNode document = Json.document("letter")
                .put("id", message.id())
                .put("at", message.at().toString())
                .put("person", message.person())
                .put("priority", Words.of(message.priority()))
                .put("subject", message.subject())
                .put("text", message.text());
        ArrayNode tells = document.putArray("tells");
        for (Told told : message.tells()) {
            tells.add(AlarmJson.withKey(Json.object(), told.alarm())
                    .put("person", told.person())
                    .put("raisedAt", told.raisedAt().toString())
                    .put("news", Words.of(told.news()))
                    .put("number", told.number()));
        }
        ArrayNode to = document.putArray("to");
        message.to().forEach(channel -> to.add(channel.value()));
        return document.toString();
    }

    private static Message message(JsonNode document) {
        List<Told> tells = new ArrayList<>();
        for (JsonNode told : document.path("tells")) {
            tells.add(new Told(
                    Json.text(told, "person"),
                    AlarmJson.key(told),
                    Json.instant(told, "raisedAt"),
                    Words.find(Told.News.class, Json.text(told, "news")),
                    told.path("number").asInt()));
        }
        Set<ChannelName> to = new TreeSet<>();
        document.path("to").forEach(channel -> to.add(new ChannelName(channel.asText())));
        return new Message(
                Json.text(document, "id"),
                Json.instant(document, "at"),
                Json.text(document, "person"),
                Words.find(Priority.class, Json.text(document, "priority")),
                Json.text(document, "subject"),
                Json.text(document, "text"),
                tells,
                to);
    }
}
