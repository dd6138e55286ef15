package bagward.site.api;

import bagward.bag.Drying;
import bagward.bag.DryingStay;
import bagward.bag.Head;
import bagward.bag.Packing;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A seed lot in the interface.
 *
 * @param tag code of the head it was cut from
 * @param house short name of the house in which it grew
 * @param seedParent line that bears the pod
 * @param pollenParent line that gives pollen
 * @param harvested when it was cut
 * @param hangs whether it hangs to dry now
 * @param stays where it hung, oldest first
 * @param packings when it was packed, oldest first
 */
public record LotAnswer(
        String tag,
        String house,
        String seedParent,
        String pollenParent,
        Optional<Instant> harvested,
        boolean hangs,
        List<Stay> stays,
        List<Packed> packings) {
    /**
     * A place where it hung.
     *
     * @param place short name of the drying place; empty for a place elsewhere, whose climate is not known
     * @param from since when
     * @param to until when; empty while it hangs there
     */
    public record Stay(Optional<String> place, Instant from, Optional<Instant> to) {
        static Stay of(DryingStay stay) {
            return new Stay(stay.house().map(Object::toString), stay.from(), stay.to());
        }
    }

    /**
     * It was packed.
     *
     * @param at when
     * @param note what was seen
     * @param moisturePercent of the moist seed, if somebody measured it, %
     * @param method how it was measured
     */
    public record Packed(Instant at, String note, Optional<Double> moisturePercent, Optional<String> method) {
        static Packed of(Packing packing) {
            return new Packed(
                    packing.at(),
                    packing.note(),
                    packing.moisture().map(m -> m.moisture().percent()),
                    packing.moisture().map(m -> m.method()));
        }
    }

    /** The lot of a harvested head at an instant. */
    public static LotAnswer of(Head head, Instant now) {
        Drying drying = head.drying();
        return new LotAnswer(
                head.tag().value(),
                head.spot().house().value(),
                head.seedParent().name(),
                head.pollenParent().name(),
                head.ending().map(ending -> ending.at()),
                drying.at(now).isPresent(),
                drying.stays().stream().map(Stay::of).toList(),
                drying.packings().stream().map(Packed::of).toList());
    }
}
