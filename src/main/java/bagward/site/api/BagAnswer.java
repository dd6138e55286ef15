package bagward.site.api;

import bagward.board.BagView;
import bagward.site.plan.Glyphs;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * A bag that is on, in the interface.
 *
 * @param tag code of the head
 * @param house short name of the house
 * @param bay short name of the bay
 * @param spot number of the spot
 * @param origin "measured" or "estimated": where temperature and humidity come from
 * @param temperature air temperature in the bag
 * @param humidity relative humidity in the bag
 * @param filmWet whether water on the film is likely now
 * @param dampMinutes how long it has been damp without a break, min
 * @param risk mould risk with its reason
 * @param putOn when it was put on
 * @param due when it is due to come off
 * @param earliest when it may sensibly come off by what was seen of its flowers; that of {@code due} if nothing was
 * @param lastFlowerOpened when its last flower opened, if that was noted
 * @param petalsDropped when its petals had dropped, if that was noted
 * @param material short name of the bag material
 * @param seedParent line that bears the pod
 * @param pollenParent line that gives pollen
 * @param crop short name of the crop of the seed parent, if one was named for it
 * @param kind "self", "sib" or "cross"
 * @param sensor the sensor that hangs in it
 * @param worst highest priority of its alarms
 */
public record BagAnswer(
        String tag,
        String house,
        String bay,
        int spot,
        String origin,
        Optional<Value> temperature,
        Optional<Value> humidity,
        boolean filmWet,
        long dampMinutes,
        RiskAnswer risk,
        Instant putOn,
        Instant due,
        Optional<Instant> earliest,
        Optional<Instant> lastFlowerOpened,
        Optional<Instant> petalsDropped,
        String material,
        String seedParent,
        String pollenParent,
        Optional<String> crop,
        String kind,
        Optional<String> sensor,
        Optional<String> worst) {
    static BagAnswer of(BagView bag) {
        return new BagAnswer(
                bag.head().tag().value(),
                bag.head().spot().house().value(),
                bag.head().spot().bay().value(),
                bag.head().spot().number(),
                Glyphs.measured(bag) ? "measured" : "estimated",
                Value.of(bag.temperature(), Quantity.TEMPERATURE.unitCode()),
                Value.of(bag.humidity(), Quantity.HUMIDITY.unitCode()),
                bag.filmWet(),
                bag.dampFor().toMinutes(),
                RiskAnswer.of(bag.risk()),
                bag.putOn(),
                bag.due(),
                bag.care().map(care -> care.dates().earliest()),
                bag.head().flowers().lastFlowerOpened(),
                bag.head().flowers().petalsDropped(),
                bag.material().value(),
                bag.head().seedParent().name(),
                bag.head().pollenParent().name(),
                bag.head().crop().map(Object::toString),
                word(bag.head().pollination().kind()),
                bag.lentSensor().map(Object::toString),
                bag.worst().map(BagAnswer::word));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
