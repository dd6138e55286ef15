package bagward.site.form;

import bagward.bag.CropId;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.PollenScore;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Reads a head that was pollinated and bagged from its form. */
public final class PutOnEntry {
    private PutOnEntry() {}

    /**
     * The change that the form enters.
     *
     * @param by who did it
     * @throws RefusedInputException with every fault of the fields
     */
    public static RegisterChange read(Fields fields, String by) {
        Optional<TagCode> tag = fields.needed("tag", t -> new TagCode(t.toUpperCase(Locale.ROOT)));
        Optional<Spot> spot = fields.needed("spot", n -> spot(fields.sent("bay"), Integer.parseInt(n)));
        if (fields.sent("bay").isEmpty()) {
            fields.refuse("bay", "this is needed");
        }
        Optional<MaterialId> material = fields.needed("material", MaterialId::new);
        Optional<PollinationKind> kind = fields.needed("kind", PutOnEntry::kind);
        Optional<Line> seed = fields.needed("seed_parent", Line::new);
        boolean self = kind.filter(k -> k == PollinationKind.SELF).isPresent();
        Optional<Line> pollen =
                self && fields.sent("pollen_parent").isEmpty() ? seed : fields.needed("pollen_parent", Line::new);
        Optional<PollenScore> score = fields.optional("score", PutOnEntry::score);
        Optional<CropId> crop = fields.optional("crop", CropId::new);
        Optional<UsedBefore> before = LotEntry.before(fields);
        Optional<Instant> at = fields.time("at");
        Optional<Pollination> pollination = fields.needed(
                "buds",
                n -> new Pollination(
                        at.orElse(Instant.EPOCH), by, kind.orElse(PollinationKind.SELF), Integer.parseInt(n), score));
        fields.check();
        return new RegisterChange.PutOn(
                tag.orElseThrow(),
                at.orElseThrow(),
                spot.orElseThrow(),
                material.orElseThrow(),
                seed.orElseThrow(),
                pollen.orElseThrow(),
                pollination.orElseThrow(),
                crop,
                before);
    }

    private static Spot spot(String bay, int number) {
        String[] parts = bay.split("/", 2);
        if (parts.length < 2) {
            throw new ImpossibleValueException("a spot needs its bay: choose one");
        }
        return new Spot(new HouseId(parts[0]), new BayId(parts[1]), number);
    }

    private static PollinationKind kind(String word) {
        return PollinationKind.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** The score of a digit, 0 to 3. */
    static PollenScore score(String digit) {
        return switch (digit) {
            case "0" -> PollenScore.NONE;
            case "1" -> PollenScore.TRACE;
            case "2" -> PollenScore.CLEAR;
            case "3" -> PollenScore.PLENTIFUL;
            default -> throw new IllegalArgumentException(digit);
        };
    }
}
