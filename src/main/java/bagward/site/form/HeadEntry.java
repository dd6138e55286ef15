package bagward.site.form;

import bagward.bag.FlowerSign;
import bagward.bag.MaterialId;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import bagward.climate.SensorId;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;

/** Reads what was done to a head from the form of its page. */
public final class HeadEntry {
    private static final int LONGEST_NOTE = 200;

    private HeadEntry() {}

    /**
     * The change that a form enters.
     *
     * @param action short name of the form
     * @return the change; empty if there is no such form
     * @throws RefusedInputException with every fault of the fields
     */
    public static Optional<RegisterChange> read(String action, TagCode tag, Fields fields) {
        if (action.equals("withdraw-flowers")) {
            return withdrawn(tag, fields);
        }
        if (action.equals("withdraw-drying")) {
            return LotEntry.withdrawn(tag, fields);
        }
        Instant at = fields.time("at").orElse(Instant.EPOCH);
        Optional<RegisterChange> change = switch (action) {
            case "take-off" -> Optional.of(new RegisterChange.TakeOff(tag, at));
            case "swap" -> swap(tag, at, fields);
            case "lend" -> fields.needed("sensor", SensorId::new).map(s -> new RegisterChange.Lend(tag, at, s));
            case "give-back" ->
                fields.needed("sensor", SensorId::new).map(s -> new RegisterChange.GiveBack(tag, at, s));
            case "last-flower" -> Optional.of(new RegisterChange.NoteFlowers(tag, at, FlowerSign.LAST_OPENED));
            case "petals-dropped" -> Optional.of(new RegisterChange.NoteFlowers(tag, at, FlowerSign.PETALS_DROPPED));
            case "harvest" -> Optional.of(new RegisterChange.Harvest(tag, at, fields.text("note", LONGEST_NOTE)));
            case "lose" -> Optional.of(new RegisterChange.Lose(tag, at, fields.text("note", LONGEST_NOTE)));
            case "hang-to-dry" -> LotEntry.hangToDry(tag, at, fields);
            case "pack" -> LotEntry.pack(tag, at, fields);
            default -> Optional.empty();
        };
        fields.check();
        return change;
    }

    private static Optional<RegisterChange> swap(TagCode tag, Instant at, Fields fields) {
        Optional<UsedBefore> before = LotEntry.before(fields);
        return fields.needed("material", MaterialId::new).map(m -> new RegisterChange.Swap(tag, at, m, before));
    }

    /** A note is named by its sign and the time that it was made for. */
    private static Optional<RegisterChange> withdrawn(TagCode tag, Fields fields) {
        Optional<Instant> noted = fields.needed("noted", HeadEntry::instant);
        Optional<FlowerSign> sign = fields.needed("sign", HeadEntry::sign);
        fields.check();
        return Optional.of(new RegisterChange.WithdrawFlowers(tag, noted.orElseThrow(), sign.orElseThrow()));
    }

    static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException none) {
            throw new ImpossibleValueException("a time such as 2027-05-11T07:30:00Z is needed");
        }
    }

    private static FlowerSign sign(String text) {
        return Arrays.stream(FlowerSign.values())
                .filter(sign -> sign.name().equals(text))
                .findFirst()
                .orElseThrow(() -> new ImpossibleValueException("there is no such sign"));
    }
}
