package bagward.collector.payload;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The payload is one number in ASCII and nothing else; its time is that of arrival.
 *
 * @param place what the number is; its unit must be given
 */
public record BareNumber(Place place) implements SelfContained {
    /** Refuses a place without a unit: the payload cannot say it. */
    public BareNumber {
        if (place.unit().isEmpty()) {
            throw new IllegalArgumentException("a bare number needs a configured unit");
        }
    }

    @Override
    public List<Place> places() {
        return List.of(place);
    }

    @Override
    public Extraction extract(byte[] payload, Instant arrivedAt) {
        double value = Numbers.parse(new String(payload, StandardCharsets.UTF_8));
        MeasureUnit unit = place.unit().orElseThrow();
        return new Extraction(List.of(RawValue.at(place, value, unit, Optional.empty())), List.of());
    }
}
