package bagward.site.api;

import bagward.board.SensorView;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A sensor in the interface.
 *
 * @param id unique name
 * @param name as people call it
 * @param house short name of the house
 * @param bay short name of the bay it stands for
 * @param spare whether it can be lent to bags
 * @param lentTo tag of the head in whose bag it hangs
 * @param silent whether it was not heard for too long
 * @param heardAt when its newest reading was measured
 * @param newest newest value of each quantity
 */
public record SensorAnswer(
        String id,
        String name,
        String house,
        Optional<String> bay,
        boolean spare,
        Optional<String> lentTo,
        boolean silent,
        Optional<Instant> heardAt,
        Map<String, Value> newest) {
    static SensorAnswer of(SensorView view) {
        Map<String, Value> newest = new TreeMap<>();
        for (Quantity quantity : Quantity.values()) {
            Value.of(Optional.ofNullable(view.newest().get(quantity)), quantity.unitCode())
                    .ifPresent(v -> newest.put(quantity.word(), v));
        }
        return new SensorAnswer(
                view.sensor().id().value(),
                view.sensor().name(),
                view.sensor().house().value(),
                view.sensor().bay().map(Object::toString),
                view.sensor().spare(),
                view.lentTo().map(Object::toString),
                view.silent(),
                view.heardAt(),
                newest);
    }
}
