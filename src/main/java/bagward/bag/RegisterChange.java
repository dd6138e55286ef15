package bagward.bag;

import bagward.climate.SensorId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Instant;
import java.util.Optional;

/**
 * Something that a person did to a head and entered into the register. Changes may be entered late: what counts is when
 * they were done.
 */
public sealed interface RegisterChange {
    /** The head it was done to. */
    TagCode tag();

    /** When it was done. */
    Instant at();

    /**
     * A head was pollinated and bagged in one go.
     *
     * @param tag a code not used before
     * @param at when the bag was put on
     * @param spot a spot of the station that is free at that time
     * @param material a known bag material
     * @param seedParent line that bears the pod
     * @param pollenParent line that gives pollen
     * @param pollination what was done; not later than {@code at}
     * @param crop what the seed parent is, for this head and the later ones of that line; empty to leave it as it is
     * @param before where the bag was used before; empty for a new bag
     */
    record PutOn(
            TagCode tag,
            Instant at,
            Spot spot,
            MaterialId material,
            Line seedParent,
            Line pollenParent,
            Pollination pollination,
            Optional<CropId> crop,
            Optional<UsedBefore> before)
            implements RegisterChange {
        /** A head with a new bag. */
        public PutOn(
                TagCode tag,
                Instant at,
                Spot spot,
                MaterialId material,
                Line seedParent,
                Line pollenParent,
                Pollination pollination,
                Optional<CropId> crop) {
            this(tag, at, spot, material, seedParent, pollenParent, pollination, crop, Optional.empty());
        }

        /** A head that says nothing of its crop. */
        public PutOn(
                TagCode tag,
                Instant at,
                Spot spot,
                MaterialId material,
                Line seedParent,
                Line pollenParent,
                Pollination pollination) {
            this(tag, at, spot, material, seedParent, pollenParent, pollination, Optional.empty());
        }
    }

    /**
     * The bag that is on was swapped for a dry one of this material.
     *
     * @param before where the dry bag was used before; empty for a new bag
     */
    record Swap(TagCode tag, Instant at, MaterialId material, Optional<UsedBefore> before) implements RegisterChange {
        /** Swapped for a new bag. */
        public Swap(TagCode tag, Instant at, MaterialId material) {
            this(tag, at, material, Optional.empty());
        }
    }

    /** The bag came off. */
    record TakeOff(TagCode tag, Instant at) implements RegisterChange {}

    /** A spare sensor was hung into the bag that is on. */
    record Lend(TagCode tag, Instant at, SensorId sensor) implements RegisterChange {}

    /** The lent sensor was taken out of the bag. */
    record GiveBack(TagCode tag, Instant at, SensorId sensor) implements RegisterChange {}

    /** Somebody saw a sign of its flowers; a bag need not be on. */
    record NoteFlowers(TagCode tag, Instant at, FlowerSign sign) implements RegisterChange {}

    /** The note of that sign made for that very time was wrong. */
    record WithdrawFlowers(TagCode tag, Instant at, FlowerSign sign) implements RegisterChange {}

    /** The head was cut as a seed lot. */
    record Harvest(TagCode tag, Instant at, String note) implements RegisterChange {}

    /** The head was given up. */
    record Lose(TagCode tag, Instant at, String note) implements RegisterChange {}

    /**
     * The seed lot was hung to dry, or to another place than before.
     *
     * @param house a drying place of the station; empty for a place elsewhere, whose climate is not known
     */
    record HangToDry(TagCode tag, Instant at, Optional<HouseId> house) implements RegisterChange {}

    /**
     * The seed lot was taken down and packed.
     *
     * @param note what was seen; may be empty
     * @param moisture of the seed, if somebody measured it
     */
    record Pack(TagCode tag, Instant at, String note, Optional<MeasuredMoisture> moisture) implements RegisterChange {}

    /** The entry of that step made for that very time was wrong. */
    record WithdrawDrying(TagCode tag, Instant at, DryingStep step) implements RegisterChange {}
}
