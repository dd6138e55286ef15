package bagward.store;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.pollen.PollenEntry;
import bagward.station.HouseId;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** Writes entries of pollen scores as documents, and reads them. */
final class PollenJson {
    private PollenJson() {}

    /** The document of an entry. */
    static String write(PollenEntry entry) {
        ObjectNode document;
        if (entry instanceof PollenEntry.Scored scored) {
            document = Json.document("pollen-score").put("score", Words.of(scored.score()));
        } else {
            document = Json.document("pollen-withdrawn");
        }
        entry.line().ifPresent(line -> document.put("line", line.name()));
        return document.put("house", entry.house().value())
                .put("at", entry.at().toString())
                .put("by", entry.by())
                .toString();
    }

    /** The entry of a document. */
    static PollenEntry read(String text) {
        JsonNode document = Json.parse(text);
        HouseId house = new HouseId(Json.text(document, "house"));
        Optional<Line> line = Json.optional(document, "line", Line::new);
        Instant at = Json.instant(document, "at");
        String by = Json.text(document, "by");
        String kind = Json.text(document, "kind");
        return switch (kind) {
            case "pollen-score" -> {
                PollenScore score = Words.find(PollenScore.class, Json.text(document, "score"));
                yield new PollenEntry.Scored(house, line, at, by, score);
            }
            case "pollen-withdrawn" -> new PollenEntry.Withdrawn(house, line, at, by);
            default ->
                throw new StoreException("the store holds a pollen entry of the unknown kind '" + kind
                        + "': use the newer Bagward that wrote it");
        };
    }
}
