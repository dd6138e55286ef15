package bagward.bag;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Pack;
import bagward.fault.ImpossibleValueException;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The columns of a line of the bag file about the seed lot and about a bag that was used before. */
final class LotCells {
    /** Names of the columns; each may be missing. */
    static final List<String> COLUMNS = List.of(
            "bag_before",
            "bag_before_off",
            "harvested",
            "harvest_note",
            "hung",
            "drying_place",
            "packed",
            "pack_note",
            "moisture",
            "moisture_method");

    private static final String ELSEWHERE = "elsewhere";

    private final CsvCells cells;
    private final LocalTimes times;

    LotCells(CsvCells cells, LocalTimes times) {
        this.cells = cells;
        this.times = times;
    }

    /** Where the bag was used before; empty for a new one. */
    Optional<UsedBefore> before() {
        Optional<TagCode> head = cells.optional("bag_before", TagCode::new);
        Optional<Instant> off = cells.optional("bag_before_off", times::read);
        cells.needs("bag_before_off", "bag_before", "a bag that was used before needs the head it was on");
        return head.map(tag -> new UsedBefore(tag, off));
    }

    /** What was done after the bag came off. */
    List<RegisterChange> changes(TagCode tag) {
        List<RegisterChange> changes = new ArrayList<>();
        String note = cells.row().cell("harvest_note");
        cells.needs("harvest_note", "harvested", "a note on the harvest needs its time");
        cells.optional("harvested", times::read).ifPresent(at -> changes.add(new Harvest(tag, at, note)));
        Optional<HouseId> place = place();
        cells.needs("drying_place", "hung", "a drying place needs the time at which the lot was hung there");
        cells.optional("hung", times::read).ifPresent(at -> changes.add(new HangToDry(tag, at, place)));
        packed(tag).ifPresent(changes::add);
        return changes;
    }

    private Optional<HouseId> place() {
        boolean elsewhere =
                cells.row().cell("drying_place").toLowerCase(Locale.ROOT).equals(ELSEWHERE);
        return elsewhere ? Optional.empty() : cells.optional("drying_place", HouseId::new);
    }

    private Optional<RegisterChange> packed(TagCode tag) {
        String note = cells.row().cell("pack_note");
        Optional<MeasuredMoisture> moisture = moisture();
        cells.needs("pack_note", "packed", "a note on the packing needs its time");
        cells.needs("moisture", "packed", "a seed moisture is entered with the packing");
        return cells.optional("packed", times::read).map(at -> new Pack(tag, at, note, moisture));
    }

    private Optional<MeasuredMoisture> moisture() {
        String method = cells.row().cell("moisture_method");
        cells.needs("moisture_method", "moisture", "a method needs the moisture it measured");
        Function<String, MeasuredMoisture> reader = text -> MeasuredMoisture.of(number(text), method);
        return cells.optional("moisture", reader);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.replace(',', '.'));
        } catch (NumberFormatException wrong) {
            throw new ImpossibleValueException("must be a number, in percent of the moist seed");
        }
    }
}
