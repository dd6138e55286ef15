package bagward.site;

import bagward.bag.Drying;
import bagward.bag.DryingStay;
import bagward.bag.Ending;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.bag.MeasuredMoisture;
import bagward.bag.Packing;
import bagward.bag.Register;
import bagward.site.view.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Seed lots as a table to take away, one a line: the first time it was hung and the last time it was packed. Columns have the
 * names of the import file, times are local.
 */
final class LotTable {
    static final List<String> COLUMNS = List.of(
            "tag",
            "seed_parent",
            "pollen_parent",
            "put_on",
            "taken_off",
            "harvested",
            "harvest_note",
            "hung",
            "drying_place",
            "packed",
            "pack_note",
            "moisture",
            "moisture_method");

    private LotTable() {}

    /** The lots of a register at an instant, in the order of their tags. */
    static List<List<String>> rows(Register register, Instant now, ZoneId zone) {
        return register.heads().stream()
                .filter(head -> head.stateAt(now) == HeadState.HARVESTED)
                .map(head -> row(head, zone))
                .toList();
    }

    private static List<String> row(Head head, ZoneId zone) {
        Drying drying = head.drying();
        Optional<DryingStay> hung = drying.stays().stream().findFirst();
        Optional<Packing> packed = drying.packings().stream().reduce((earlier, later) -> later);
        Optional<MeasuredMoisture> moisture = packed.flatMap(Packing::moisture);
        return List.of(
                head.tag().value(),
                head.seedParent().name(),
                head.pollenParent().name(),
                Words.field(head.baggings().get(0).putOn(), zone),
                time(head.baggings().get(head.baggings().size() - 1).takenOff(), zone),
                time(head.ending().map(Ending::at), zone),
                head.ending().map(Ending::note).orElse(""),
                time(hung.map(DryingStay::from), zone),
                hung.map(stay -> stay.house().map(Object::toString).orElse("elsewhere"))
                        .orElse(""),
                time(packed.map(Packing::at), zone),
                packed.map(Packing::note).orElse(""),
                moisture.map(m -> Double.toString(m.moisture().percent())).orElse(""),
                moisture.map(MeasuredMoisture::method).orElse(""));
    }

    private static String time(Optional<Instant> at, ZoneId zone) {
        return at.map(instant -> Words.field(instant, zone)).orElse("");
    }
}
