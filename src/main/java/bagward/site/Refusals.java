package bagward.site;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import java.util.List;
import java.util.Map;

/** Brings what the register refuses to the fields of the form that it came from. */
final class Refusals {
    private static final Map<String, String> FIELD_OF_PART =
            Map.of("time", "at", "pollination", "at", "who", "by", "until", "for");

    private Refusals() {}

    static Entered entered(String form, Fields fields, RefusedInputException refused) {
        List<Fault> faults = refused.faults().stream().map(Refusals::atField).toList();
        return new Entered(form, fields.values(), faults);
    }

    private static Fault atField(Fault fault) {
        String part =
                fault.place().substring(fault.place().lastIndexOf(", ") + 1).strip();
        return new Fault(FIELD_OF_PART.getOrDefault(part, part), fault.found(), fault.rule(), fault.remedy());
    }
}
