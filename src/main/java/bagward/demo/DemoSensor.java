package bagward.demo;

import java.time.Instant;
import java.util.function.Function;

/**
 * One sensor of the demo.
 *
 * @param id its name in the configuration
 * @param topic where it publishes
 * @param second how many seconds after its minute it measures, 0 to 59
 * @param place what it feels
 * @param nature how it errs
 * @param writer how it words its messages
 * @param from first moment at which it speaks
 * @param until moment from which it is silent
 */
record DemoSensor(
        String id,
        String topic,
        int second,
        Function<DemoWorld, AirSample> place,
        SensorNature nature,
        PayloadWriter writer,
        Instant from,
        Instant until) {

    static DemoSensor always(
            String id, int second, Function<DemoWorld, AirSample> place, SensorNature nature, PayloadWriter writer) {
        return new DemoSensor(id, "mirrenholt/" + id, second, place, nature, writer, Instant.MIN, Instant.MAX);
    }

    DemoSensor silentFrom(Instant instant) {
        return new DemoSensor(id, topic, second, place, nature, writer, from, instant);
    }

    DemoSensor speakingFrom(Instant instant) {
        return new DemoSensor(id, topic, second, place, nature, writer, instant, until);
    }

    boolean speaksAt(Instant instant) {
        return !instant.isBefore(from) && instant.isBefore(until);
    }
}
