package bagward.bag;

import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.TakeOff;
import bagward.climate.SensorId;
import bagward.fault.Fault;
import bagward.fault.ImpossibleValueException;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One line of the bag file: each cell read on its own, so that every fault of the line is found. */
final class BagCsvRow {
    /** Stands for a tag that is wrong; nothing of such a line is used. */
    private static final TagCode NO_TAG = new TagCode("X");

    private final CsvCells cells;
    private final LocalTimes times;
    private final List<Fault> faults;
    private final LotCells lot;

    BagCsvRow(CsvTable.Row row, LocalTimes times, List<Fault> faults) {
        this.cells = new CsvCells(row, faults);
        this.times = times;
        this.faults = faults;
        this.lot = new LotCells(cells, times);
    }

    /** The changes of the line; empty if a cell is wrong, whose fault was then added. */
    List<RegisterChange> changes() {
        int before = faults.size();
        Optional<TagCode> tag = cells.cell("tag", TagCode::new);
        Optional<Instant> putOn = cells.cell("put_on", times::read);
        Optional<Spot> spot = spot();
        Optional<MaterialId> material = cells.cell("material", MaterialId::new);
        Optional<Line> seedParent = cells.cell("seed_parent", Line::new);
        Optional<Line> pollenParent = cells.cell("pollen_parent", Line::new);
        Optional<Pollination> pollination = pollination(putOn.orElse(Instant.EPOCH));
        Optional<CropId> crop = cells.optional("crop", CropId::new);
        Optional<Instant> takenOff = cells.optional("taken_off", times::read);
        Optional<SensorId> sensor = cells.optional("sensor", SensorId::new);
        Optional<Instant> lentFrom = cells.optional("lent_from", times::read);
        Optional<Instant> givenBack = cells.optional("given_back", times::read);
        Optional<Instant> lastFlower = cells.optional("last_flower", times::read);
        Optional<Instant> petals = cells.optional("petals_dropped", times::read);
        cells.needs("lent_from", "sensor", "a time of lending needs a sensor");
        cells.needs("given_back", "sensor", "a time of lending needs a sensor");
        Optional<UsedBefore> used = lot.before();
        List<RegisterChange> ofLot = lot.changes(tag.orElse(NO_TAG));
        if (faults.size() > before) {
            return List.of();
        }
        TagCode code = tag.orElseThrow();
        Instant start = putOn.orElseThrow();
        List<RegisterChange> changes = new ArrayList<>();
        changes.add(new PutOn(
                code,
                start,
                spot.orElseThrow(),
                material.orElseThrow(),
                seedParent.orElseThrow(),
                pollenParent.orElseThrow(),
                pollination.orElseThrow(),
                crop,
                used));
        sensor.ifPresent(s -> changes.add(new Lend(code, lentFrom.orElse(start), s)));
        givenBack.ifPresent(at -> changes.add(new GiveBack(code, at, sensor.orElseThrow())));
        lastFlower.ifPresent(at -> changes.add(new NoteFlowers(code, at, FlowerSign.LAST_OPENED)));
        petals.ifPresent(at -> changes.add(new NoteFlowers(code, at, FlowerSign.PETALS_DROPPED)));
        takenOff.ifPresent(at -> changes.add(new TakeOff(code, at)));
        changes.addAll(ofLot);
        return changes;
    }

    private Optional<Spot> spot() {
        Optional<HouseId> house = cells.cell("house", HouseId::new);
        Optional<BayId> bay = cells.cell("bay", BayId::new);
        Optional<Integer> number = cells.cell("spot", BagCsvRow::wholeNumber);
        if (house.isEmpty() || bay.isEmpty() || number.isEmpty()) {
            return Optional.empty();
        }
        return cells.cell("spot", text -> new Spot(house.get(), bay.get(), number.get()));
    }

    private Optional<Pollination> pollination(Instant at) {
        Optional<PollinationKind> kind = cells.cell("kind", BagCsvRow::kind);
        Optional<Integer> buds = cells.cell("buds", BagCsvRow::wholeNumber);
        Optional<String> by = cells.cell("by", text -> text);
        Optional<PollenScore> score = cells.optional("score", BagCsvRow::score);
        if (kind.isEmpty() || buds.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        return cells.cell("buds", text -> new Pollination(at, by.get(), kind.get(), buds.get(), score));
    }

    private static int wholeNumber(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException wrong) {
            throw new ImpossibleValueException("must be a whole number");
        }
    }

    private static PollinationKind kind(String text) {
        String name = text.toUpperCase(Locale.ROOT);
        return Arrays.stream(PollinationKind.values())
                .filter(kind -> kind.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new ImpossibleValueException("must be self, sib or cross"));
    }

    private static PollenScore score(String text) {
        return switch (text) {
            case "0" -> PollenScore.NONE;
            case "1" -> PollenScore.TRACE;
            case "2" -> PollenScore.CLEAR;
            case "3" -> PollenScore.PLENTIFUL;
            default -> throw new ImpossibleValueException("must be 0, 1, 2 or 3, or empty if it was not scored");
        };
    }
}
