package bagward.site.page;

import bagward.fault.Fault;
import java.util.List;

/**
 * The form for a file of bags.
 *
 * @param text what was sent
 * @param by who sends it, as typed
 * @param faults what is wrong with it, by line
 */
public record ImportPage(String text, String by, List<Fault> faults) {
    /** Copies the list. */
    public ImportPage {
        faults = List.copyOf(faults);
    }
}
