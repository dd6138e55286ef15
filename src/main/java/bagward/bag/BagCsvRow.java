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
import java.util.function.Function;

/** One line of the bag file: each cell read on its own, so that every fault of the line is found. */
final class BagCsvRow {
    private final CsvTable.Row row;
    private final LocalTimes times;
    private final List<Fault> faults;

    BagCsvRow(CsvTable.Row row, LocalTimes times, List<Fault> faults) {
        this.row = row;
        this.times = times;
        this.faults = faults;
    }

    /** The changes of the line; empty if a cell is wrong, whose fault was then added. */
    List<RegisterChange> changes() {
        int before = faults.size();
        Optional<TagCode> tag = cell("tag", TagCode::new);
        Optional<Instant> putOn = cell("put_on", times::read);
        Optional<Spot> spot = spot();
        Optional<MaterialId> material = cell("material", MaterialId::new);
        Optional<Line> seedParent = cell("seed_parent", Line::new);
        Optional<Line> pollenParent = cell("pollen_parent", Line::new);
        Optional<Pollination> pollination = pollination(putOn.orElse(Instant.EPOCH));
        Optional<CropId> crop = optionalCell("crop", CropId::new);
        Optional<Instant> takenOff = optionalCell("taken_off", times::read);
        Optional<SensorId> sensor = optionalCell("sensor", SensorId::new);
        Optional<Instant> lentFrom = optionalCell("lent_from", times::read);
        Optional<Instant> givenBack = optionalCell("given_back", times::read);
        Optional<Instant> lastFlower = optionalCell("last_flower", times::read);
        Optional<Instant> petals = optionalCell("petals_dropped", times::read);
        if (sensor.isEmpty() && row.cell("sensor").isEmpty()) {
            needsSensor("lent_from");
            needsSensor("given_back");
        }
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
                crop));
        sensor.ifPresent(s -> changes.add(new Lend(code, lentFrom.orElse(start), s)));
        givenBack.ifPresent(at -> changes.add(new GiveBack(code, at, sensor.orElseThrow())));
        lastFlower.ifPresent(at -> changes.add(new NoteFlowers(code, at, FlowerSign.LAST_OPENED)));
        petals.ifPresent(at -> changes.add(new NoteFlowers(code, at, FlowerSign.PETALS_DROPPED)));
        takenOff.ifPresent(at -> changes.add(new TakeOff(code, at)));
        return changes;
    }

    private void needsSensor(String column) {
        if (!row.cell(column).isEmpty()) {
            faults.add(fault(column, "a time of lending needs a sensor", "Name it in column 'sensor'."));
        }
    }

    private Optional<Spot> spot() {
        Optional<HouseId> house = cell("house", HouseId::new);
        Optional<BayId> bay = cell("bay", BayId::new);
        Optional<Integer> number = cell("spot", BagCsvRow::wholeNumber);
        if (house.isEmpty() || bay.isEmpty() || number.isEmpty()) {
            return Optional.empty();
        }
        return cell("spot", text -> new Spot(house.get(), bay.get(), number.get()));
    }

    private Optional<Pollination> pollination(Instant at) {
        Optional<PollinationKind> kind = cell("kind", BagCsvRow::kind);
        Optional<Integer> buds = cell("buds", BagCsvRow::wholeNumber);
        Optional<String> by = cell("by", text -> text);
        Optional<PollenScore> score = optionalCell("score", BagCsvRow::score);
        if (kind.isEmpty() || buds.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        return cell("buds", text -> new Pollination(at, by.get(), kind.get(), buds.get(), score));
    }

    private <T> Optional<T> optionalCell(String column, Function<String, T> reader) {
        return row.cell(column).isEmpty() ? Optional.empty() : cell(column, reader);
    }

    private <T> Optional<T> cell(String column, Function<String, T> reader) {
        String text = row.cell(column);
        if (text.isEmpty()) {
            faults.add(fault(column, "must not be empty", ""));
            return Optional.empty();
        }
        try {
            return Optional.of(reader.apply(text));
        } catch (ImpossibleValueException wrong) {
            faults.add(fault(column, String.valueOf(wrong.getMessage()), ""));
        } catch (LocalTimes.UnclearTimeException wrong) {
            faults.add(fault(column, String.valueOf(wrong.getMessage()), wrong.remedy()));
        }
        return Optional.empty();
    }

    private Fault fault(String column, String rule, String remedy) {
        return new Fault("line " + row.line() + ", column '" + column + "'", row.cell(column), rule, remedy);
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
