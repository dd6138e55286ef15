package bagward.store;

import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.climate.SensorId;
import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;

/** Checks of humidity sensors as documents. */
final class SaltCheckJson {
    private SaltCheckJson() {}

    static String write(SaltCheck check) {
        ObjectNode document = Json.document("salt-check")
                .put("sensor", check.sensor().value())
                .put("checkedAt", check.checkedAt().toString());
        document.set("low", point(check.low()));
        document.set("high", point(check.high()));
        return document.toString();
    }

    private static ObjectNode point(SaltCheck.Point point) {
        return Json.object()
                .put("salt", point.salt().word())
                .put("solutionCelsius", point.solution().degrees())
                .put("readPercent", point.read());
    }

    static SaltCheck read(String text) {
        JsonNode document = Json.parse(text);
        try {
            return new SaltCheck(
                    new SensorId(Json.text(document, "sensor")),
                    Json.instant(document, "checkedAt"),
                    point(document.path("low")),
                    point(document.path("high")));
        } catch (ImpossibleValueException e) {
            throw new StoreException(
                    "the store holds a damaged check of a sensor: restore it from a backup (" + text + ")", e);
        }
    }

    private static SaltCheck.Point point(JsonNode point) {
        String word = Json.text(point, "salt");
        SaturatedSalt salt = Arrays.stream(SaturatedSalt.values())
                .filter(s -> s.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new ImpossibleValueException("no such salt: " + word));
        return new SaltCheck.Point(
                salt,
                new Celsius(Json.number(point, "solutionCelsius")),
                new RelativeHumidity(Json.number(point, "readPercent")));
    }
}
