package bagward.store;

import bagward.bag.MeasuredMoisture;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** The parts of register changes about seed lots and bags that were used before, as documents; both ways. */
final class LotJson {
    private static final String BEFORE = "usedBefore";
    private static final String MOISTURE = "moisture";

    private LotJson() {}

    static ObjectNode hangToDry(RegisterChange.HangToDry change) {
        ObjectNode document = Json.document("hang-to-dry");
        change.house().ifPresent(house -> document.put("place", house.value()));
        return document;
    }

    static ObjectNode pack(RegisterChange.Pack change) {
        ObjectNode document = Json.document("pack").put("note", change.note());
        change.moisture()
                .ifPresent(moisture -> document.putObject(MOISTURE)
                        .put("percentWetBasis", moisture.moisture().percent())
                        .put("method", moisture.method()));
        return document;
    }

    static Optional<MeasuredMoisture> moisture(JsonNode document) {
        JsonNode moisture = document.path(MOISTURE);
        return moisture.isMissingNode()
                ? Optional.empty()
                : Optional.of(
                        MeasuredMoisture.of(Json.number(moisture, "percentWetBasis"), Json.text(moisture, "method")));
    }

    /** Adds where a bag was used before; nothing for a new one. */
    static void put(ObjectNode document, Optional<UsedBefore> before) {
        before.ifPresent(used -> {
            ObjectNode part = document.putObject(BEFORE).put("head", used.head().value());
            used.takenOff().ifPresent(at -> part.put("takenOff", at.toString()));
        });
    }

    static Optional<UsedBefore> before(JsonNode document) {
        JsonNode part = document.path(BEFORE);
        return part.isMissingNode()
                ? Optional.empty()
                : Optional.of(new UsedBefore(
                        new TagCode(Json.text(part, "head")), Json.optional(part, "takenOff", Instant::parse)));
    }
}
