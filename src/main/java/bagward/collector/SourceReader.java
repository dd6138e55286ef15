package bagward.collector;

import bagward.climate.SensorId;
import bagward.collector.payload.BareNumber;
import bagward.collector.payload.JsonAt;
import bagward.collector.payload.PayloadFormat;
import bagward.collector.payload.Place;
import bagward.collector.payload.SenMl;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TimeForm;
import bagward.collector.payload.TopicFilter;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads how one sensor is heard, from its entry of the list {@code sensors}:
 *
 * <pre>{@code
 * - id: north-air
 *   topic: station/north/air   # topic, or filter with + and #
 *   gateway: north gateway     # what sends for it and others, if anything does; left out: it sends for itself
 *   payload: json              # number, json, senml or sparkplug
 *   time: /at                  # json: where the time stands (JSON Pointer); left out: the time of arrival
 *   time-form: iso             # iso, seconds or milliseconds (since 1970)
 *   reads:
 *   - {quantity: temperature, at: /t, unit: Cel}
 *   - {quantity: humidity, at: /h, unit: "%RH"}
 *   - {quantity: light, at: /lux, unit: lx, light-source: daylight, ceiling: 65535}
 * }</pre>
 *
 * <p>In {@code reads}, {@code at} is a JSON Pointer such as {@code /data/0/t}; with senml the name or its ending, and may be
 * left out where the unit tells; with number there is none. {@code unit} may be left out with senml; with json
 * {@code unit-at} can point at it in the payload. Light in lx or W/m2 needs {@code light-source} or {@code factor} (µmol
 * m⁻² s⁻¹ per unit). {@code ceiling} is the top of the sensor's range in its unit. A read may have a {@code topic} of its
 * own; with number and several quantities each needs one.
 *
 * <p>With sparkplug (Sparkplug B) there is no {@code topic}, but {@code group}, {@code node} and, unless the metrics are those
 * of the edge node itself, {@code device}; {@code at} is the whole name of the metric, and {@code unit} is needed.
 */
final class SourceReader {
    private static final Map<String, TimeForm> FORMS = Map.of(
            TimeForm.ISO.word(), TimeForm.ISO,
            TimeForm.SECONDS.word(), TimeForm.SECONDS,
            TimeForm.MILLISECONDS.word(), TimeForm.MILLISECONDS);

    private static final Map<String, Kind> KINDS =
            Map.of("number", Kind.NUMBER, "json", Kind.JSON, "senml", Kind.SENML, "sparkplug", Kind.SPARKPLUG);

    private static final int LONGEST_NAME = 60;

    /** How payloads are written. */
    enum Kind {
        NUMBER,
        JSON,
        SENML,
        SPARKPLUG
    }

    private SourceReader() {}

    /** The sources of one sensor; none if anything was refused. Ends the entry. */
    static List<SensorSource> read(Section entry) {
        Optional<SensorId> id = entry.value("id", SensorId::new);
        Optional<Kind> kind = entry.choice("payload", KINDS);
        if (kind.filter(Kind.SPARKPLUG::equals).isPresent()) {
            return SparkplugReader.read(entry, id);
        }
        SparkplugReader.refuseKeys(entry);
        Optional<TopicFilter> topic = CollectorReader.topic(entry);
        Optional<String> gateway = entry.findValue("gateway", SourceReader::gateway);
        Optional<JsonAt.TimeAt> time = time(entry, kind);
        Map<TopicFilter, List<Place>> places = places(entry, kind, topic);
        return entry.make(() -> sources(id.orElseThrow(), gateway, kind.orElseThrow(), time, places))
                .orElse(List.of());
    }

    private static Optional<JsonAt.TimeAt> time(Section entry, Optional<Kind> kind) {
        Optional<String> at = entry.findText("time");
        TimeForm form = entry.choice("time-form", FORMS, TimeForm.ISO);
        if (at.isPresent() && kind.isPresent() && kind.get() != Kind.JSON) {
            entry.refuse("time", "is of use with payload json only: senml has its own, a number has none");
        } else if (at.isPresent() && !JsonAt.isPointer(at.get())) {
            entry.refuse("time", PlaceReader.POINTER_RULE);
        }
        return at.map(pointer -> new JsonAt.TimeAt(pointer, form));
    }

    private static Map<TopicFilter, List<Place>> places(
            Section entry, Optional<Kind> kind, Optional<TopicFilter> topic) {
        Map<TopicFilter, List<Place>> places = new LinkedHashMap<>();
        List<Section> reads = entry.sections("reads", 1);
        for (Section read : reads) {
            Optional<TopicFilter> own = CollectorReader.topic(read);
            if (kind.isPresent() && kind.get() == Kind.NUMBER && reads.size() > 1 && !read.has("topic")) {
                read.refuse("topic", "a number carries one quantity: give each entry of reads its own topic");
            } else if (!read.has("topic") && !entry.has("topic")) {
                read.refuse("topic", "a topic is required here or at the sensor");
            }
            Optional<Place> place = PlaceReader.read(read, kind);
            own.or(() -> topic)
                    .ifPresent(t -> place.ifPresent(p ->
                            places.computeIfAbsent(t, x -> new ArrayList<>()).add(p)));
        }
        return places;
    }

    private static List<SensorSource> sources(
            SensorId id,
            Optional<String> gateway,
            Kind kind,
            Optional<JsonAt.TimeAt> time,
            Map<TopicFilter, List<Place>> places) {
        List<SensorSource> sources = new ArrayList<>();
        places.forEach((topic, found) -> formats(kind, time, found)
                .forEach(format -> sources.add(new SensorSource(id, topic, format, gateway))));
        return sources;
    }

    private static String gateway(String text) {
        if (text.isBlank() || text.length() > LONGEST_NAME) {
            throw new ImpossibleValueException("must be a name of 1 to " + LONGEST_NAME + " characters");
        }
        return text.strip();
    }

    private static List<PayloadFormat> formats(Kind kind, Optional<JsonAt.TimeAt> time, List<Place> places) {
        return switch (kind) {
            case NUMBER ->
                places.stream().map(p -> (PayloadFormat) new BareNumber(p)).toList();
            case JSON -> List.of(new JsonAt(places, time));
            case SENML -> List.of(new SenMl(places));
            case SPARKPLUG -> List.of();
        };
    }
}
