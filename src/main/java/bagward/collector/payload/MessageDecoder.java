package bagward.collector.payload;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * From a message to readings: a pure function of the message and the configured sources.
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
        for (SensorSource source : sources) {
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
                || withWildcard.stream().anyMatch(s -> s.topic().matches(topic));
    }

    /** The readings of a message, and what cannot be used of it. */
    public Decoded decode(Message message) {
        List<SensorSource> sources = sourcesOf(message.topic());
        if (sources.isEmpty()) {
            return new Decoded(false, List.of(), List.of());
        }
        if (message.bytes().length > LONGEST_PAYLOAD) {
            return new Decoded(
                    true,
                    List.of(),
                    List.of("the payload has " + message.bytes().length + " bytes: allowed are " + LONGEST_PAYLOAD));
        }
        List<Reading> readings = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        Map<SensorId, Duration> ahead = new HashMap<>();
        for (SensorSource source : sources) {
            decodeFor(source, message, readings, refusals, ahead);
        }
        if (readings.isEmpty() && refusals.isEmpty()) {
            refusals.add("nothing of what is configured for this topic is in the payload: "
                    + String.join(
                            ", ", sources.stream().map(MessageDecoder::wanted).toList()));
        }
        return new Decoded(true, readings, refusals.stream().distinct().toList(), ahead);
    }

    private List<SensorSource> sourcesOf(String topic) {
        List<SensorSource> sources = new ArrayList<>(byTopic.getOrDefault(topic, List.of()));
        withWildcard.stream().filter(s -> s.topic().matches(topic)).forEach(sources::add);
        return sources;
    }

    private void decodeFor(
            SensorSource source,
            Message message,
            List<Reading> readings,
            List<String> refusals,
            Map<SensorId, Duration> ahead) {
        try {
            Extraction found = source.format().extract(message.bytes(), message.arrivedAt());
            found.refusals().forEach(reason -> refusals.add(source.sensor() + ": " + reason));
            for (RawValue raw : found.values()) {
                raw.measuredAt()
                        .filter(at -> !message.retained())
                        .map(at -> Duration.between(message.arrivedAt(), at))
                        .ifPresent(by -> ahead.merge(source.sensor(), by, MessageDecoder::later));
                judge(source, raw, message, readings, refusals);
            }
        } catch (RefusedPayloadException e) {
            refusals.add(source.sensor() + ": " + e.getMessage());
        }
    }

    private static Duration later(Duration one, Duration other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    private void judge(
            SensorSource source, RawValue raw, Message message, List<Reading> readings, List<String> refusals) {
        try {
            Reading reading = judge.judge(source.sensor(), raw, message.arrivedAt());
            if (message.retained() && reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL)) {
                throw new RefusedPayloadException("a retained message without a time of its own may be of any age");
            }
            readings.add(reading);
        } catch (RefusedPayloadException e) {
            refusals.add(source.sensor() + ": " + e.getMessage());
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
