package bagward.store;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Aside;
import bagward.alarm.RuleId;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;

/** Alarms and alarm events as documents. */
final class AlarmJson {
    private AlarmJson() {}

    /** The document of an alarm. */
    static String write(Alarm alarm) {
        ObjectNode document = withKey(Json.document("alarm"), alarm.key())
                .put("phase", Words.of(alarm.phase()))
                .put("since", alarm.since().toString())
                .put("message", alarm.message());
        alarm.raisedAt().ifPresent(at -> document.put("raisedAt", at.toString()));
        alarm.acknowledgedAt().ifPresent(at -> document.put("acknowledgedAt", at.toString()));
        alarm.acknowledgedBy().ifPresent(by -> document.put("acknowledgedBy", by));
        alarm.clearSince().ifPresent(at -> document.put("clearSince", at.toString()));
        alarm.aside().ifPresent(aside -> document.set("aside", asideOf(aside)));
        return document.toString();
    }

    private static ObjectNode asideOf(Aside aside) {
        ObjectNode part = Json.object()
                .put("by", aside.by())
                .put("from", aside.from().toString())
                .put("why", aside.why());
        aside.until().ifPresent(until -> part.put("until", until.toString()));
        return part;
    }

    private static Optional<Aside> aside(JsonNode document) {
        return Optional.ofNullable(document.get("aside"))
                .map(part -> new Aside(
                        Json.text(part, "by"),
                        Json.instant(part, "from"),
                        time(part, "until"),
                        Json.text(part, "why")));
    }

    /** The alarm of a document. */
    static Alarm readAlarm(String text) {
        JsonNode document = Json.parse(text);
        return new Alarm(
                key(document),
                Words.find(AlarmPhase.class, Json.text(document, "phase")),
                Json.instant(document, "since"),
                time(document, "raisedAt"),
                time(document, "acknowledgedAt"),
                Json.optional(document, "acknowledgedBy", Function.identity()),
                time(document, "clearSince"),
                Json.text(document, "message"),
                aside(document));
    }

    /** The document of an event. */
    static String write(AlarmEvent event) {
        ObjectNode document = withKey(Json.document("alarm-event"), event.key())
                .put("at", event.at().toString())
                .put("from", Words.of(event.from()))
                .put("to", Words.of(event.to()))
                .put("by", event.by())
                .put("message", event.message());
        if (!event.why().isEmpty()) {
            document.put("why", event.why());
        }
        return document.toString();
    }

    /** The event of a document. */
    static AlarmEvent readEvent(String text) {
        JsonNode document = Json.parse(text);
        return new AlarmEvent(
                Json.instant(document, "at"),
                key(document),
                Words.find(AlarmPhase.class, Json.text(document, "from")),
                Words.find(AlarmPhase.class, Json.text(document, "to")),
                Json.text(document, "by"),
                Json.text(document, "message"),
                Json.optional(document, "why", Function.identity()).orElse(""));
    }

    /** A document with the key of an alarm added. */
    static ObjectNode withKey(ObjectNode document, AlarmKey key) {
        return document.put("rule", key.rule().value())
                .put("subject", key.subject().key());
    }

    /** The key of an alarm in a document. */
    static AlarmKey key(JsonNode document) {
        return new AlarmKey(new RuleId(Json.text(document, "rule")), SubjectKey.parse(Json.text(document, "subject")));
    }

    private static Optional<Instant> time(JsonNode document, String field) {
        return Json.optional(document, field, Instant::parse);
    }
}
