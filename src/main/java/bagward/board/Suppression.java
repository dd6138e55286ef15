package bagward.board;

import bagward.alarm.Verdict;
import bagward.climate.SensorId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Suppression by design: a bag of which nothing is known because the sensors of its place are silent has no climate
 * alarms of its own; the silence has one.
 */
final class Suppression {
    private final Set<SensorId> silent;

    /** @param silent the sensors that are silent */
    Suppression(Set<SensorId> silent) {
        this.silent = Set.copyOf(silent);
    }

    /** The verdict, or one that says by which silent sensor it is suppressed. */
    Verdict of(Verdict verdict, Place place) {
        return of(verdict, place.sources());
    }

    /** The same for a place that is fed by these sensors. */
    Verdict of(Verdict verdict, Map<Quantity, List<Sensor>> sources) {
        if (verdict.outcome() != Verdict.Outcome.UNKNOWN) {
            return verdict;
        }
        Optional<Sensor> cause = Stream.of(Quantity.TEMPERATURE, Quantity.HUMIDITY)
                .flatMap(quantity -> sources.getOrDefault(quantity, List.of()).stream())
                .filter(sensor -> silent.contains(sensor.id()))
                .findFirst();
        return cause.map(sensor -> verdict.suppressedBy("not known: sensor " + sensor.name() + " is silent"))
                .orElse(verdict);
    }
}
