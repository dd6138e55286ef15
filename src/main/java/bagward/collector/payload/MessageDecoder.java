package bagward.collector.payload;

import bagward.climate.SensorId;
import bagward.collector.sparkplug.Command;
import bagward.collector.sparkplug.NodeState;
import bagward.collector.sparkplug.SparkplugTopic;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From a message to readings: a function of the message and the configured sources; with Sparkplug B also of the births that
 * came before, so messages must be decoded in the order of their arrival.
 *
 * <p>Several sources may listen to one topic (a gateway that sends for many sensors). What one source looks for and does
 * not find is no fault while another finds something.
 */
public final class MessageDecoder {
    /** Longest payload that is decoded, bytes. */
    public static final int LONGEST_PAYLOAD = 64 * 1024;

    /** How old a reading may be when it arrives, where nothing else is configured. */
    public static final Duration USUAL_PAST_TOLERANCE = Duration.ofDays(400);

    private final Map<String, List<SensorSource>> byTopic = new HashMap<>();
    private final List<SensorSource> withWildcard = new ArrayList<>();
    private final SparkplugSources sparkplug;
    private final Judge judge;

    /** A decoder that takes readings of up to 400 days ago. */
    public MessageDecoder(List<SensorSource> sources, Duration futureTolerance) {
        this(sources, futureTolerance, USUAL_PAST_TOLERANCE);
    }

    /**
     * @param sources what is configured
     * @param futureTolerance how far ahead of the station's clock a sensor's clock may be
     * @param pastTolerance how old a reading may be when it arrives
     */
    public MessageDecoder(List<SensorSource> sources, Duration futureTolerance, Duration pastTolerance) {
        this.judge = new Judge(futureTolerance, pastTolerance);
        this.sparkplug = new SparkplugSources(sources);
        for (SensorSource source : sources) {
            if (source.format() instanceof SparkplugDevice) {
                continue;
            }
            String topic = source.topic().text();
            if (topic.indexOf('+') >= 0 || topic.indexOf('#') >= 0) {
                withWildcard.add(source);
            } else {
                byTopic.computeIfAbsent(topic, t -> new ArrayList<>()).add(source);
            }
        }
    }

    /** Whether any source listens to a topic. */
    public boolean knows(String topic) {
        return byTopic.containsKey(topic)
                || sparkplug.topic(topic).isPresent()
                || withWildcard.stream().anyMatch(s -> s.topic().matches(topic));
    }

    /** The readings of a message, and what cannot be used of it. */
    public Decoded decode(Message message) {
        Optional<SparkplugTopic> edge = sparkplug.topic(message.topic());
        if (edge.isPresent()) {
            return sparkplug.decode(edge.get(), message, judge);
        }
        List<SensorSource> sources = sourcesOf(message.topic());
        return sources.isEmpty()
                ? new Decoded(false, List.of(), List.of())
                : decode(message, sources).decoded();
    }

    private Gathered decode(Message message, List<SensorSource> sources) {
        Gathered gathered = new Gathered(message, judge);
        if (message.bytes().length > LONGEST_PAYLOAD) {
            gathered.refuse("the payload has " + message.bytes().length + " bytes: allowed are " + LONGEST_PAYLOAD);
            return gathered;
        }
        sources.forEach(source -> decodeFor(source, message, gathered));
        if (gathered.nothing()) {
            gathered.refuse("nothing of what is configured for this topic is in the payload: "
                    + String.join(
                            ", ", sources.stream().map(MessageDecoder::wanted).toList()));
        }
        return gathered;
    }

    /** The topic, if it is one of a Sparkplug B edge node that a sensor is behind. */
    public Optional<SparkplugTopic> edgeTopic(String topic) {
        return sparkplug.topic(topic);
    }

    /**
     * The commands by which Sparkplug B edge nodes are to be asked for their births now; they count as sent.
     *
     * @param now by the station's clock
     */
    public List<Command> rebirthRequests(Instant now) {
        return sparkplug.requests(now);
    }

    /** Since when each sensor is offline of which its Sparkplug B edge node, or the broker, said so. */
    public Map<SensorId, Instant> offline() {
        return sparkplug.offline();
    }

    /** How each Sparkplug B edge node is. */
    public List<NodeState> edgeNodes() {
        return sparkplug.states();
    }

    private List<SensorSource> sourcesOf(String topic) {
        List<SensorSource> sources = new ArrayList<>(byTopic.getOrDefault(topic, List.of()));
        withWildcard.stream().filter(s -> s.topic().matches(topic)).forEach(sources::add);
        return sources;
    }

    private static void decodeFor(SensorSource source, Message message, Gathered gathered) {
        if (!(source.format() instanceof SelfContained format)) {
            return;
        }
        try {
            Extraction found = format.extract(message.bytes(), message.arrivedAt());
            found.refusals().forEach(reason -> gathered.refuse(source.sensor(), reason));
            found.values().forEach(raw -> gathered.add(source.sensor(), raw));
        } catch (RefusedPayloadException e) {
            gathered.refuse(source.sensor(), String.valueOf(e.getMessage()));
        }
    }

    private static String wanted(SensorSource source) {
        return source.sensor() + " "
                + String.join(
                        " ",
                        source.format().places().stream()
                                .map(p -> p.quantity().word() + (p.at().isEmpty() ? "" : " at " + p.at()))
                                .toList());
    }
}
