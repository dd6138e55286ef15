package bagward.mould;

import java.util.List;
import java.util.Optional;

/**
 * What the climate under its bags and the calendar mean for a head, beside the mould risk so far.
 *
 * @param dates when the bag should come off
 * @param heat heat in the bag since the first was put on
 * @param notes what the seed lot should remember of the pollination
 * @param ripening when the pods will be ripe; information only
 * @param ahead what tonight would add to the mould risk; empty without an outlook
 */
public record HeadCare(
        BagDates dates, HeatAssessment heat, List<PollinationNote> notes, HarvestDays ripening, Optional<Ahead> ahead) {
    /** Copies the list. */
    public HeadCare {
        notes = List.copyOf(notes);
    }
}
