package bagward.store.influx;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An answer by which the server refuses some points of a request and keeps the others: status 400 (1.x, 3) or 422 (2.x) and
 * "partial write" in its words, as of InfluxDB 1.6.7 that was run, and as the documentation of 2.x and 3 has it.
 *
 * @param said what the server said
 */
record PointsRefused(String said) {
    private static final int BAD_REQUEST = 400;
    private static final int UNPROCESSABLE = 422;
    private static final String WORDS = "partial write";
    private static final Pattern DROPPED = Pattern.compile("dropped=(\\d+)");

    /** The answer beneath an error, if it is one of this kind. */
    static Optional<PointsRefused> in(Throwable e) {
        return InfluxTrouble.answer(e)
                .filter(answer -> answer.status() == BAD_REQUEST || answer.status() == UNPROCESSABLE)
                .map(AnswerRefused::said)
                .filter(said -> said.toLowerCase(Locale.ROOT).contains(WORDS))
                .map(PointsRefused::new);
    }

    /** Whether it is all points of a request of so many. */
    boolean all(int points) {
        Matcher dropped = DROPPED.matcher(said);
        return dropped.find() && dropped.group(1).equals(Integer.toString(points));
    }

    /** Whether it is for the type of a field. */
    boolean conflict() {
        return said.toLowerCase(Locale.ROOT).contains("field type conflict");
    }

    /** Why, for the quarantine; the same for all points of a kind. */
    String reason(InfluxSettings settings) {
        return "InfluxDB at " + settings.url() + " refuses it for good (" + why() + "): " + remedy();
    }

    private String why() {
        String from = said.substring(said.toLowerCase(Locale.ROOT).indexOf(WORDS));
        return from.replaceAll("\\s*dropped=\\d+.*", "")
                .replaceAll("[\\\\\"}]+", "")
                .strip();
    }

    private String remedy() {
        if (said.toLowerCase(Locale.ROOT).contains("beyond retention policy")) {
            return "it is older than the retention policy keeps readings; lengthen that, for what comes late to be kept";
        }
        return conflict()
                ? "another program wrote something else under these names at that time; give Bagward a database of its own"
                : "look at the limits in the configuration of the server";
    }
}
