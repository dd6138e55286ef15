package bagward.site.form;

import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmKey;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Reads what a person does with an alarm from a form. */
public final class AlarmActEntry {
    private static final int LONGEST_REASON = 200;

    private AlarmActEntry() {}

    /**
     * The act that a form enters.
     *
     * @param act short name of the form: shelve, take-off or bring-back
     * @param by who does it
     * @return the act; empty if there is no such form
     * @throws bagward.fault.RefusedInputException with every fault of the fields
     */
    public static Optional<AlarmAct> read(String act, AlarmKey key, String by, Fields fields, Instant now) {
        Optional<AlarmAct> read = switch (act) {
            case "shelve" -> {
                int hours = fields.needed("for", Integer::parseInt).orElse(1);
                String why = fields.neededText("why", LONGEST_REASON);
                yield Optional.of(new AlarmAct.Shelve(key, by, now.plus(Duration.ofHours(hours)), why));
            }
            case "take-off" ->
                Optional.of(new AlarmAct.TakeOutOfService(key, by, fields.neededText("why", LONGEST_REASON)));
            case "bring-back" -> Optional.of(new AlarmAct.BringBack(key, by));
            default -> Optional.empty();
        };
        fields.check();
        return read;
    }
}
