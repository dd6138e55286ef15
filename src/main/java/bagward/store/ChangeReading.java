package bagward.store;

import bagward.bag.CropId;
import bagward.bag.DryingStep;
import bagward.bag.FlowerSign;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.PollenScore;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;

/** Reads register changes from documents; {@link ChangeJson} is its mirror. */
final class ChangeReading {
    private ChangeReading() {}

    /** The change of a document. */
    static RegisterChange read(String text) {
        JsonNode document = Json.parse(text);
        TagCode tag = new TagCode(Json.text(document, "tag"));
        Instant at = Json.instant(document, "at");
        String kind = Json.text(document, "kind");
        return switch (kind) {
            case "put-on" -> putOn(document, tag, at);
            case "swap" -> new RegisterChange.Swap(tag, at, material(document), LotJson.before(document));
            case "take-off" -> new RegisterChange.TakeOff(tag, at);
            case "lend" -> new RegisterChange.Lend(tag, at, sensor(document));
            case "give-back" -> new RegisterChange.GiveBack(tag, at, sensor(document));
            case "note-flowers" -> new RegisterChange.NoteFlowers(tag, at, sign(document));
            case "withdraw-flowers" -> new RegisterChange.WithdrawFlowers(tag, at, sign(document));
            case "harvest" -> new RegisterChange.Harvest(tag, at, Json.text(document, "note"));
            case "lose" -> new RegisterChange.Lose(tag, at, Json.text(document, "note"));
            case "hang-to-dry" -> new RegisterChange.HangToDry(tag, at, Json.optional(document, "place", HouseId::new));
            case "pack" -> new RegisterChange.Pack(tag, at, Json.text(document, "note"), LotJson.moisture(document));
            case "withdraw-drying" ->
                new RegisterChange.WithdrawDrying(tag, at, Words.find(DryingStep.class, Json.text(document, "step")));
            default ->
                throw new StoreException("the store holds a register change of the unknown kind '" + kind
                        + "': use the newer Bagward that wrote it");
        };
    }

    private static RegisterChange putOn(JsonNode document, TagCode tag, Instant at) {
        JsonNode spot = document.path("spot");
        JsonNode pollination = document.path("pollination");
        return new RegisterChange.PutOn(
                tag,
                at,
                new Spot(
                        new HouseId(Json.text(spot, "house")),
                        new BayId(Json.text(spot, "bay")),
                        spot.path("number").asInt()),
                material(document),
                new Line(Json.text(document, "seedParent")),
                new Line(Json.text(document, "pollenParent")),
                new Pollination(
                        Json.instant(pollination, "at"),
                        Json.text(pollination, "by"),
                        Words.find(PollinationKind.class, Json.text(pollination, "kind")),
                        pollination.path("budsOpened").asInt(),
                        Json.optional(pollination, "score", word -> Words.find(PollenScore.class, word))),
                Json.optional(document, "crop", CropId::new),
                LotJson.before(document));
    }

    private static MaterialId material(JsonNode document) {
        return new MaterialId(Json.text(document, "material"));
    }

    private static FlowerSign sign(JsonNode document) {
        return Words.find(FlowerSign.class, Json.text(document, "sign"));
    }

    private static SensorId sensor(JsonNode document) {
        return new SensorId(Json.text(document, "sensor"));
    }
}
