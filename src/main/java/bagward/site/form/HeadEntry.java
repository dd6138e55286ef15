package bagward.site.form;

import bagward.bag.MaterialId;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.fault.RefusedInputException;
import java.time.Instant;
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
        Instant at = fields.time("at").orElse(Instant.EPOCH);
        Optional<RegisterChange> change = switch (action) {
            case "take-off" -> Optional.of(new RegisterChange.TakeOff(tag, at));
            case "swap" -> fields.needed("material", MaterialId::new).map(m -> new RegisterChange.Swap(tag, at, m));
            case "lend" -> fields.needed("sensor", SensorId::new).map(s -> new RegisterChange.Lend(tag, at, s));
            case "give-back" ->
                fields.needed("sensor", SensorId::new).map(s -> new RegisterChange.GiveBack(tag, at, s));
            case "harvest" -> Optional.of(new RegisterChange.Harvest(tag, at, fields.text("note", LONGEST_NOTE)));
            case "lose" -> Optional.of(new RegisterChange.Lose(tag, at, fields.text("note", LONGEST_NOTE)));
            default -> Optional.empty();
        };
        fields.check();
        return change;
    }
}
