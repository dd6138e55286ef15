package bagward.collector;

import bagward.climate.LightSource;
import bagward.collector.payload.JsonAt;
import bagward.collector.payload.LightConversion;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.Place;
import bagward.document.Section;
import bagward.units.Quantity;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads one entry of {@code reads}: where a quantity stands in a payload and in which unit. */
final class PlaceReader {
    /** What a pointer must be, for messages. */
    static final String POINTER_RULE =
            "must be a JSON Pointer (RFC 6901): '/' before each key, as /air/temperature or /values/0";

    private static final double HIGHEST_CEILING = 1e6;

    private static final Map<String, Quantity> QUANTITIES =
            Arrays.stream(Quantity.values()).collect(Collectors.toMap(Quantity::word, Function.identity()));

    private static final Map<String, LightSource> LIGHT_SOURCES =
            Arrays.stream(LightSource.values()).collect(Collectors.toMap(LightSource::word, Function.identity()));

    private PlaceReader() {}

    /** The place; empty if anything was refused. Ends the entry. */
    static Optional<Place> read(Section read, Optional<SourceReader.Kind> kind) {
        Optional<Quantity> quantity = read.choice("quantity", QUANTITIES);
        String at = at(read, kind);
        Optional<String> unitAt = unitAt(read, kind);
        Optional<MeasureUnit> unit = quantity.flatMap(q -> unit(read, kind, q));
        LightConversion light = light(read, quantity, unit);
        OptionalDouble ceiling = number(read, "ceiling", HIGHEST_CEILING);
        return read.make(() -> new Place(quantity.orElseThrow(), at, unit, unitAt, light, ceiling));
    }

    private static String at(Section read, Optional<SourceReader.Kind> kind) {
        Optional<String> at = read.findText("at");
        if (kind.isEmpty()) {
            return "";
        }
        switch (kind.get()) {
            case NUMBER -> {
                if (at.isPresent()) {
                    read.refuse("at", "is of no use with payload number: the number is the whole payload");
                }
            }
            case JSON -> {
                if (at.isEmpty() || !JsonAt.isPointer(at.get())) {
                    read.refuse("at", POINTER_RULE);
                }
            }
            case SENML -> {
                return at.orElse("");
            }
            case SPARKPLUG -> {
                if (at.isEmpty()) {
                    read.refuse("at", "must be the whole name of the metric, as Air/Temperature");
                }
            }
        }
        return at.orElse("");
    }

    private static Optional<String> unitAt(Section read, Optional<SourceReader.Kind> kind) {
        Optional<String> unitAt = read.findText("unit-at");
        if (unitAt.isPresent() && kind.isPresent() && kind.get() != SourceReader.Kind.JSON) {
            read.refuse("unit-at", "is of use with payload json only");
        } else if (unitAt.isPresent() && !JsonAt.isPointer(unitAt.get())) {
            read.refuse("unit-at", POINTER_RULE);
        } else if (unitAt.isPresent() && read.has("unit")) {
            read.refuse("unit-at", "unit and unit-at exclude each other: keep one of them");
        }
        return unitAt;
    }

    private static Optional<MeasureUnit> unit(Section read, Optional<SourceReader.Kind> kind, Quantity quantity) {
        boolean optional = kind.filter(SourceReader.Kind.SENML::equals).isPresent() || read.has("unit-at");
        if (!read.has("unit") && optional) {
            return Optional.empty();
        }
        return read.choice(
                "unit",
                MeasureUnit.of(quantity).stream().collect(Collectors.toMap(MeasureUnit::code, Function.identity())));
    }

    private static LightConversion light(Section read, Optional<Quantity> quantity, Optional<MeasureUnit> unit) {
        Optional<LightSource> source =
                read.has("light-source") ? read.choice("light-source", LIGHT_SOURCES) : Optional.empty();
        OptionalDouble factor = number(read, "factor", 1000);
        LightConversion conversion = factor.isPresent()
                ? LightConversion.ofFactor(factor.getAsDouble())
                : source.map(LightConversion::of).orElse(LightConversion.UNKNOWN);
        if (quantity.isEmpty()) {
            return conversion;
        }
        if (quantity.get() != Quantity.LIGHT) {
            refuseIfGiven(read, "light-source");
            refuseIfGiven(read, "factor");
        } else if (unit.isPresent() && unit.get().toCanonical(1, conversion).isEmpty()) {
            read.refuse(
                    "unit",
                    "needs the light source that it was measured under",
                    source.isPresent()
                            ? "No factor is known for " + source.get().word() + ": state factor, umol/m2/s per "
                                    + unit.get().code() + "."
                            : "Add light-source, or factor in umol/m2/s per "
                                    + unit.get().code() + ".");
        }
        return conversion;
    }

    private static void refuseIfGiven(Section read, String key) {
        if (read.has(key)) {
            read.refuse(key, "is of use for light only");
        }
    }

    private static OptionalDouble number(Section read, String key, double highest) {
        return read.has(key) ? OptionalDouble.of(read.number(key, 0, highest, "")) : OptionalDouble.empty();
    }
}
