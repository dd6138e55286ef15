package bagward.site.form;

import bagward.fault.Fault;
import java.util.List;
import java.util.Map;

/**
 * What a person has typed into a form, with what is wrong about it: nothing that was typed is lost.
 *
 * @param form short name of the form; empty if none was sent
 * @param values value by field
 * @param faults what is wrong, place = field
 */
public record Entered(String form, Map<String, String> values, List<Fault> faults) {
    /** Copies both. */
    public Entered {
        values = Map.copyOf(values);
        faults = List.copyOf(faults);
    }

    /** Fresh values, nothing sent yet. */
    public static Entered fresh(Map<String, String> values) {
        return new Entered("", values, List.of());
    }

    /** Value of a field; empty if it has none. */
    public String value(String field) {
        return values.getOrDefault(field, "");
    }

    /** What is wrong with a field; empty if nothing. */
    public String fault(String field) {
        return faults.stream()
                .filter(f -> f.place().equals(field))
                .map(Entered::words)
                .findFirst()
                .orElse("");
    }

    /** What is wrong with a field of a form; empty if nothing or if another form was sent. */
    public String fault(String ofForm, String field) {
        return form.equals(ofForm) ? fault(field) : "";
    }

    /** Whether anything is wrong with a form. */
    public boolean refused(String ofForm) {
        return form.equals(ofForm) && !faults.isEmpty();
    }

    /** A fault in words, without its place. */
    public static String words(Fault fault) {
        String found = fault.found().isEmpty() ? "" : "‘" + fault.found() + "’: ";
        String remedy = fault.remedy().isEmpty() ? "" : ". " + fault.remedy();
        return found + fault.rule() + remedy;
    }
}
