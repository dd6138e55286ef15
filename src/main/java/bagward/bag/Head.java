package bagward.bag;

import bagward.station.Spot;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A flower head that is worked on.
 *
 * @param tag its code
 * @param spot where it stands
 * @param seedParent the line that bears the pod
 * @param pollenParent the line that gives pollen; equal to the seed parent for a self
 * @param crop what its seed parent is: named with it, or with an earlier head of that line; empty if never
 * @param pollination what was done
 * @param baggings its bags, oldest first, never two at a time
 * @param flowers what was seen of its flowers
 * @param ending how it ended; empty while it is worked on
 * @param drying what became of its seed lot
 */
public record Head(
        TagCode tag,
        Spot spot,
        Line seedParent,
        Line pollenParent,
        Optional<CropId> crop,
        Pollination pollination,
        List<Bagging> baggings,
        FlowerSigns flowers,
        Optional<Ending> ending,
        Drying drying) {
    /** Copies the list. */
    public Head {
        baggings = List.copyOf(baggings);
    }

    /** A head of whose seed lot nothing was entered. */
    public Head(
            TagCode tag,
            Spot spot,
            Line seedParent,
            Line pollenParent,
            Optional<CropId> crop,
            Pollination pollination,
            List<Bagging> baggings,
            FlowerSigns flowers,
            Optional<Ending> ending) {
        this(tag, spot, seedParent, pollenParent, crop, pollination, baggings, flowers, ending, Drying.NONE);
    }

    /** The bag that is on at an instant. */
    public Optional<Bagging> baggingAt(Instant instant) {
        return baggings.stream().filter(b -> b.onAt(instant)).findFirst();
    }

    /** Where the head stands at an instant. */
    public HeadState stateAt(Instant instant) {
        if (ending.isPresent() && !instant.isBefore(ending.get().at())) {
            return ending.get().state();
        }
        if (baggingAt(instant).isPresent()) {
            return HeadState.BAGGED;
        }
        boolean hadBag = baggings.stream().anyMatch(b -> !instant.isBefore(b.putOn()));
        return hadBag ? HeadState.BARE : HeadState.POLLINATED;
    }
}
