package bagward.collector.payload;

import java.util.regex.Pattern;

/** Numbers as sensors write them: decimal digits with a point, no spaces inside, no thousands marks. */
final class Numbers {
    /** Longest text that is read as a number, characters. */
    static final int LONGEST = 64;

    private static final Pattern FORM = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,4})?");

    private Numbers() {}

    /**
     * The number that a text is; spaces around it are allowed.
     *
     * @throws RefusedPayloadException if it is not a finite number
     */
    static double parse(String text) {
        String trimmed = text.strip();
        if (trimmed.length() > LONGEST || !FORM.matcher(trimmed).matches()) {
            throw new RefusedPayloadException(Texts.quoted(trimmed) + " is not a number" + hint(trimmed)
                    + ": allowed are digits with a decimal point, as 21.5 or -3e-1");
        }
        return finite(Double.parseDouble(trimmed));
    }

    /** @throws RefusedPayloadException if the value is NaN or infinite */
    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new RefusedPayloadException("the number is too large: it must be finite in 64 bit floating point");
        }
        return value;
    }

    private static String hint(String text) {
        return text.indexOf(',') >= 0 ? " (write a decimal point, not a comma)" : "";
    }
}
