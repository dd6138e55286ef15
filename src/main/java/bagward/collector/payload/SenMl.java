package bagward.collector.payload;

import bagward.collector.payload.SenMlRecord.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A SenML pack in JSON (RFC 8428). A place finds its records by the resolved name, whole or its ending; with no name, by
 * a unit of its quantity. Texts, truths, bytes and sums are legal and not read.
 *
 * @param places what is read
 */
public record SenMl(List<Place> places) implements SelfContained {
    /** Copies the list. */
    public SenMl {
        places = List.copyOf(places);
    }

    @Override
    public Extraction extract(byte[] payload, Instant arrivedAt) {
        List<SenMlRecord> records = SenMlPack.resolve(StrictJson.parse(payload), arrivedAt);
        List<RawValue> values = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (Place place : places) {
            try {
                values.addAll(read(place, records));
            } catch (RefusedPayloadException e) {
                refusals.add(place.quantity().word() + ": " + e.getMessage());
            }
        }
        return new Extraction(values, refusals);
    }

    private static List<RawValue> read(Place place, List<SenMlRecord> records) {
        List<RawValue> values = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        for (SenMlRecord candidate : records) {
            if (candidate.value() instanceof Value.Numeric number && isMeant(place, candidate)) {
                names.add(candidate.name());
                values.add(new RawValue(
                        place,
                        number.number(),
                        unit(place, candidate),
                        Optional.of(candidate.time()),
                        candidate.timed()));
            }
        }
        if (names.size() > 1) {
            throw new RefusedPayloadException("several names fit, " + Texts.quoted(String.join(", ", names))
                    + ": give the whole name under 'at'");
        }
        return values;
    }

    private static boolean isMeant(Place place, SenMlRecord candidate) {
        if (!place.at().isEmpty()) {
            return candidate.name().endsWith(place.at());
        }
        return candidate
                .unit()
                .flatMap(MeasureUnit::ofCode)
                .filter(u -> u.quantity() == place.quantity())
                .isPresent();
    }

    private static MeasureUnit unit(Place place, SenMlRecord found) {
        if (found.unit().isEmpty()) {
            return place.unit()
                    .orElseThrow(() -> new RefusedPayloadException(
                            Texts.quoted(found.name()) + " has no unit: give one under 'unit'"));
        }
        // in SenML a lone % is a ratio, an older spelling of / (RFC 8428 section 12.1)
        String code = found.unit().get().equals("%") ? "/" : found.unit().get();
        return MeasureUnit.ofCode(code)
                .filter(u -> u.quantity() == place.quantity())
                .orElseThrow(() -> new RefusedPayloadException(Texts.quoted(found.name()) + " has the unit "
                        + Texts.quoted(code) + ", which is not one of "
                        + place.quantity().word()));
    }
}
