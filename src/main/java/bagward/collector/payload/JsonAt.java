package bagward.collector.payload;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A JSON document with values at known places (JSON Pointers, RFC 6901). A place that a message does not have, or has as
 * {@code null}, is no fault as long as another place is there: many sensors send only what changed.
 *
 * @param places where each quantity stands
 * @param time where the time stands; empty or absent in a message means the time of arrival
 */
public record JsonAt(List<Place> places, Optional<TimeAt> time) implements SelfContained {
    /** Copies the list. */
    public JsonAt {
        places = List.copyOf(places);
    }

    /**
     * Where a document says when it was measured.
     *
     * @param at JSON Pointer
     * @param form how it is written
     */
    public record TimeAt(String at, TimeForm form) {}

    /** Whether a text is a JSON Pointer as RFC 6901 has it. */
    public static boolean isPointer(String text) {
        return Pointer.isOne(text);
    }

    @Override
    public Extraction extract(byte[] payload, Instant arrivedAt) {
        JsonNode document = StrictJson.parse(payload);
        Optional<Instant> measuredAt = time.flatMap(t -> timeIn(document, t));
        List<RawValue> values = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (Place place : places) {
            try {
                find(document, place.at())
                        .ifPresent(node ->
                                values.add(RawValue.at(place, number(node), unit(document, place), measuredAt)));
            } catch (RefusedPayloadException e) {
                refusals.add(place.quantity().word() + " at " + place.at() + ": " + e.getMessage());
            }
        }
        return new Extraction(values, refusals);
    }

    private static Optional<JsonNode> find(JsonNode document, String at) {
        return Pointer.of(at).in(document).filter(node -> !node.isNull());
    }

    private static Optional<Instant> timeIn(JsonNode document, TimeAt time) {
        return find(document, time.at()).map(node -> {
            if (!node.isNumber() && !node.isTextual()) {
                throw new RefusedPayloadException("the time at " + time.at() + " is neither a number nor a text");
            }
            return time.form().parse(node.asText());
        });
    }

    private static double number(JsonNode node) {
        if (node.isNumber()) {
            return Numbers.finite(node.doubleValue());
        }
        if (node.isTextual()) {
            return Numbers.parse(node.textValue());
        }
        throw new RefusedPayloadException("is not a number but " + node.getNodeType());
    }

    private static MeasureUnit unit(JsonNode document, Place place) {
        if (place.unitAt().isEmpty()) {
            return place.unit().orElseThrow(() -> new RefusedPayloadException("no unit is configured"));
        }
        String at = place.unitAt().get();
        String name = find(document, at)
                .map(JsonNode::asText)
                .orElseThrow(() -> new RefusedPayloadException("no unit at " + at + " in the payload"));
        return MeasureUnit.ofName(name, place.quantity())
                .orElseThrow(() -> new RefusedPayloadException("the unit " + Texts.quoted(name) + " is not one of "
                        + place.quantity().word() + ": allowed are "
                        + String.join(
                                ", ",
                                MeasureUnit.of(place.quantity()).stream()
                                        .map(MeasureUnit::code)
                                        .toList())));
    }
}
