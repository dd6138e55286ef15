package bagward.collector.payload;

/** Foreign text in our own sentences: cut short, and without characters that would break a line. */
final class Texts {
    private static final int LONGEST = 60;
    private static final int LONGEST_SENTENCE = 160;

    private Texts() {}

    /** At most 60 characters of a foreign text, in quotes, control characters replaced. */
    static String quoted(String text) {
        StringBuilder safe = new StringBuilder("'");
        text.codePoints().limit(LONGEST).forEach(c -> safe.appendCodePoint(Character.isISOControl(c) ? '\uFFFD' : c));
        return safe.append(text.codePointCount(0, text.length()) > LONGEST ? "…'" : "'")
                .toString();
    }

    /** The first 160 characters of a library's message as one line without control characters. */
    static String oneLine(String message) {
        String line = message.replaceAll("\\s+", " ").replaceAll("\\p{Cc}", "\uFFFD");
        return line.length() > LONGEST_SENTENCE ? line.substring(0, LONGEST_SENTENCE) + "…" : line;
    }
}
