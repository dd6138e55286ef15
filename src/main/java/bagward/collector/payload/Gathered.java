package bagward.collector.payload;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is found in one message, number by number. */
final class Gathered {
    /** Reasons that are kept in full; a message of thousands of faults is not worth a page of them. */
    private static final int REASONS = 20;

    private final Message message;
    private final Judge judge;
    private final List<Reading> readings = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final Map<SensorId, Duration> ahead = new HashMap<>();

    Gathered(Message message, Judge judge) {
        this.message = message;
        this.judge = judge;
    }

    /** Takes a number that tells of the sensor's clock too, since it was sent when it was measured. */
    void add(SensorId sensor, RawValue raw) {
        raw.measuredAt()
                .filter(at -> !message.retained())
                .map(at -> Duration.between(message.arrivedAt(), at))
                .ifPresent(by -> ahead.merge(sensor, by, Gathered::later));
        addOld(sensor, raw);
    }

    /** Takes a number that may have waited for long. */
    void addOld(SensorId sensor, RawValue raw) {
        try {
            Reading reading = judge.judge(sensor, raw, message.arrivedAt());
            if (message.retained() && reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL)) {
                throw new RefusedPayloadException("a retained message without a time of its own may be of any age");
            }
            readings.add(reading);
        } catch (RefusedPayloadException e) {
            refuse(sensor, String.valueOf(e.getMessage()));
        }
    }

    void refuse(SensorId sensor, String reason) {
        refuse(sensor + ": " + reason);
    }

    void refuse(String reason) {
        refusals.add(reason);
    }

    boolean nothing() {
        return readings.isEmpty() && refusals.isEmpty();
    }

    /** All of it, for a topic that a source listens to. */
    Decoded decoded() {
        List<String> distinct = refusals.stream().distinct().toList();
        List<String> told = new ArrayList<>(distinct.subList(0, Math.min(REASONS, distinct.size())));
        if (distinct.size() > REASONS) {
            told.add("and " + (distinct.size() - REASONS) + " more of the kind");
        }
        return new Decoded(true, readings, told, ahead);
    }

    private static Duration later(Duration one, Duration other) {
        return one.compareTo(other) > 0 ? one : other;
    }
}
