package bagward.mould;

import bagward.bag.CropId;
import bagward.bag.Head;
import bagward.fault.ImpossibleValueException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The crops of a station, and what is known of keeping their seed.
 *
 * @param usual the crop of heads whose line has none of its own
 * @param all every crop that is known, the usual one among them
 * @param storage drying and keeping of seed, the same for all
 */
public record Crops(Crop usual, List<Crop> all, Storage storage) {
    /** Copies the list; refuses one without the usual crop. */
    public Crops {
        all = List.copyOf(all);
        if (!all.contains(usual)) {
            throw new ImpossibleValueException("the usual crop '" + usual.id() + "' must be among the known ones");
        }
    }

    /** A station with one crop. */
    public static Crops only(Crop crop, Storage storage) {
        return new Crops(crop, List.of(crop), storage);
    }

    /** Their short names. */
    public Set<CropId> ids() {
        return all.stream().map(Crop::id).collect(Collectors.toSet());
    }

    /** The crop of a head: that of its seed parent, which bears the pod; the usual one where no other was ever named. */
    public Crop of(Head head) {
        return head.crop()
                .flatMap(id -> all.stream().filter(crop -> crop.id().equals(id)).findFirst())
                .orElse(usual);
    }
}
