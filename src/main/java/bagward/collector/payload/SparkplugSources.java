package bagward.collector.payload;

import bagward.climate.SensorId;
import bagward.collector.sparkplug.Command;
import bagward.collector.sparkplug.EdgeNodes;
import bagward.collector.sparkplug.NamedMetric;
import bagward.collector.sparkplug.NodeId;
import bagward.collector.sparkplug.NodeState;
import bagward.collector.sparkplug.Said;
import bagward.collector.sparkplug.SparkplugException;
import bagward.collector.sparkplug.SparkplugTopic;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * The sensors that are heard by Sparkplug B, and the edge nodes before them. Messages must be taken in the order of arrival.
 * Safe for several threads.
 */
final class SparkplugSources {
    private static final int NAMED = 5;

    private final Map<NodeId, Map<SensorId, SparkplugDevice>> byNode = new TreeMap<>();
    private final EdgeNodes nodes;

    SparkplugSources(List<SensorSource> sources) {
        for (SensorSource source : sources) {
            if (source.format() instanceof SparkplugDevice device) {
                byNode.computeIfAbsent(device.node(), n -> new TreeMap<>()).put(source.sensor(), device);
            }
        }
        Map<NodeId, Set<String>> followed = new HashMap<>();
        byNode.forEach((node, sensors) -> sensors.values()
                .forEach(d -> followed.computeIfAbsent(node, n -> new HashSet<>())
                        .add(d.device().orElse(""))));
        this.nodes = new EdgeNodes(followed);
    }

    /** The topic, if it is one of an edge node that a sensor is behind. */
    Optional<SparkplugTopic> topic(String text) {
        return byNode.isEmpty()
                ? Optional.empty()
                : SparkplugTopic.of(text).filter(topic -> byNode.containsKey(topic.node()));
    }

    Decoded decode(SparkplugTopic topic, Message message, Judge judge) {
        Gathered gathered = new Gathered(message, judge);
        if (message.retained()) {
            gathered.refuse("a retained Sparkplug B message may be of any age: births and data are not to be retained");
            return gathered.decoded();
        }
        try {
            Said said = nodes.take(topic, message.bytes(), message.arrivedAt());
            byNode.getOrDefault(topic.node(), Map.of()).forEach((sensor, device) -> {
                if (device.device().equals(topic.device())) {
                    said.troubles().forEach(trouble -> gathered.refuse(sensor, trouble));
                    device.places().forEach(place -> read(sensor, place, said, gathered));
                }
            });
        } catch (SparkplugException e) {
            gathered.refuse(topic.type() + " of " + topic.node() + ": " + e.getMessage());
        }
        return gathered.decoded();
    }

    private static void read(SensorId sensor, Place place, Said said, Gathered gathered) {
        List<NamedMetric> meant = said.metrics().stream()
                .filter(metric -> metric.name().equals(place.at()))
                .toList();
        if (meant.isEmpty() && said.birth()) {
            gathered.refuse(sensor, "its birth has no metric " + Texts.quoted(place.at()) + ", but " + names(said));
        }
        meant.stream().filter(metric -> !metric.absent()).forEach(metric -> add(sensor, place, metric, gathered));
    }

    private static void add(SensorId sensor, Place place, NamedMetric metric, Gathered gathered) {
        try {
            RawValue raw = RawValue.at(place, number(metric), place.unit().orElseThrow(), metric.capturedAt());
            if (metric.historical()) {
                gathered.addOld(sensor, raw);
            } else {
                gathered.add(sensor, raw);
            }
        } catch (SparkplugException | RefusedPayloadException e) {
            gathered.refuse(sensor, Texts.quoted(place.at()) + " " + e.getMessage());
        }
    }

    private static double number(NamedMetric metric) {
        OptionalDouble number = metric.number();
        return number.isPresent()
                ? Numbers.finite(number.getAsDouble())
                : Numbers.parse(metric.text().orElse(""));
    }

    private static String names(Said said) {
        List<String> names = said.metrics().stream()
                .map(NamedMetric::name)
                .limit(NAMED)
                .map(Texts::quoted)
                .toList();
        int more = said.metrics().size() - names.size();
        return names.isEmpty() ? "none at all" : String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
    }

    /** The commands by which edge nodes are to be asked for their births now; they count as sent. */
    List<Command> requests(Instant now) {
        return nodes.requests(now);
    }

    /** Since when each sensor is offline of which that was said. */
    Map<SensorId, Instant> offline() {
        Map<SensorId, Instant> offline = new HashMap<>();
        byNode.values()
                .forEach(sensors ->
                        sensors.forEach((sensor, device) -> nodes.offlineSince(device.node(), device.device())
                                .ifPresent(since -> offline.put(sensor, since))));
        return offline;
    }

    List<NodeState> states() {
        return nodes.states();
    }
}
