package bagward.fault;

/**
 * One thing that is wrong with an input.
 *
 * @param place where it stands: file and line, path in the configuration, or field of a form
 * @param found the value as it was given; empty if it is missing
 * @param rule what is allowed there
 * @param remedy what to do about it; empty if the rule says it already
 */
public record Fault(String place, String found, String rule, String remedy) {

    /** A fault whose rule says already what to do. */
    public static Fault of(String place, String found, String rule) {
        return new Fault(place, found, rule, "");
    }

    /** The fault as one line for a person. */
    public String sentence() {
        String value = found.isEmpty() ? "" : " found '" + found + "';";
        String help = remedy.isEmpty() ? "" : " " + remedy;
        return place + ":" + value + " " + rule + "." + help;
    }
}
