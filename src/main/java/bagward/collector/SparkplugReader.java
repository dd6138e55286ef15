package bagward.collector;

import bagward.climate.SensorId;
import bagward.collector.payload.Place;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.SparkplugDevice;
import bagward.collector.sparkplug.NodeId;
import bagward.document.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads how a sensor is heard by Sparkplug B, from its entry of the list {@code sensors}; see {@link SourceReader}. */
final class SparkplugReader {
    private static final String OTHERWISE = "is of no use with payload sparkplug: ";

    private SparkplugReader() {}

    /** The one source of the sensor; none if anything was refused. Ends the entry. */
    static List<SensorSource> read(Section entry, Optional<SensorId> id) {
        Optional<String> group = entry.value("group", NodeId::level);
        Optional<String> node = entry.value("node", NodeId::level);
        Optional<String> device = entry.findValue("device", NodeId::level);
        refuse(entry, "topic", "its topics follow from group, node and device");
        refuse(entry, "gateway", "its edge node is its gateway");
        refuse(entry, "time", "its payloads have a place for it");
        refuse(entry, "time-form", "its payloads have a place for it");
        List<Place> places = new ArrayList<>();
        for (Section read : entry.sections("reads", 1)) {
            refuse(read, "topic", "its topics follow from group, node and device");
            PlaceReader.read(read, Optional.of(SourceReader.Kind.SPARKPLUG)).ifPresent(places::add);
        }
        return entry.make(() ->
                        source(id.orElseThrow(), new NodeId(group.orElseThrow(), node.orElseThrow()), device, places))
                .map(List::of)
                .orElse(List.of());
    }

    private static SensorSource source(SensorId id, NodeId node, Optional<String> device, List<Place> places) {
        SparkplugDevice format = new SparkplugDevice(node, device, places);
        return new SensorSource(id, format.topics(), format);
    }

    /** With another payload these keys mean nothing. */
    static void refuseKeys(Section entry) {
        for (String key : List.of("group", "node", "device")) {
            if (entry.has(key)) {
                entry.refuse(key, "is of use with payload sparkplug only");
            }
        }
    }

    private static void refuse(Section section, String key, String why) {
        if (section.has(key)) {
            section.refuse(key, OTHERWISE + why);
        }
    }
}
