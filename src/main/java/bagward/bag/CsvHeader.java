package bagward.bag;

import bagward.document.Nearest;
import bagward.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * Which columns a CSV text may have.
 *
 * @param required columns that must be there
 * @param optional columns that may be there
 */
record CsvHeader(List<String> required, List<String> optional) {
    private static final String PLACE = "line 1";

    /** What is wrong with a header; empty if nothing is. */
    List<Fault> faults(List<String> header) {
        List<String> known = new ArrayList<>(required);
        known.addAll(optional);
        List<Fault> faults = new ArrayList<>();
        for (String name : header) {
            if (!known.contains(name)) {
                faults.add(new Fault(PLACE, name, "is no column of this file", remedy(name, known)));
            }
        }
        for (String name : CsvTable.doubled(header)) {
            faults.add(Fault.of(PLACE, name, "a column stands there once"));
        }
        for (String name : required) {
            if (!header.contains(name)) {
                String remedy = "Needed are: " + String.join(", ", required) + ".";
                faults.add(new Fault(PLACE, "", "column '" + name + "' is missing", remedy));
            }
        }
        return faults;
    }

    private static String remedy(String name, List<String> known) {
        return Nearest.of(name, known)
                .map(near -> "Did you mean '" + near + "'?")
                .orElseGet(() -> "Known are: " + String.join(", ", known) + ".");
    }
}
