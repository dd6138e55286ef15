package bagward.collector.payload;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a payload writes its time. */
public enum TimeForm {
    /** ISO 8601 with {@code Z} or an offset, as {@code 2026-04-03T06:15:00+02:00}. */
    ISO,
    /** Seconds since 1970-01-01T00:00Z, fractions allowed. */
    SECONDS,
    /** Milliseconds since 1970-01-01T00:00Z. */
    MILLISECONDS;

    /** Milliseconds of the year 9999's end: no later time can be written in ISO 8601 with four digits. */
    private static final double LAST_MILLISECOND = 253_402_300_799_999.0;

    /** The word used in the configuration. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The form with this word. */
    public static Optional<TimeForm> ofWord(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }

    /** @throws RefusedPayloadException if the text is not a time of this form */
    Instant parse(String text) {
        return switch (this) {
            case ISO -> iso(text.strip());
            case SECONDS -> ofMilliseconds(Numbers.parse(text) * 1000);
            case MILLISECONDS -> ofMilliseconds(Numbers.parse(text));
        };
    }

    /** @throws RefusedPayloadException if it lies before 1970 or after the year 9999 */
    static Instant ofMilliseconds(double milliseconds) {
        if (!(milliseconds >= 0 && milliseconds <= LAST_MILLISECOND)) {
            throw new RefusedPayloadException("the time lies outside 1970 to 9999: check seconds against milliseconds");
        }
        return Instant.ofEpochMilli(Math.round(milliseconds));
    }

    private static Instant iso(String text) {
        try {
            return OffsetDateTime.parse(text, DateTimeFormatter.ISO_OFFSET_DATE_TIME)
                    .toInstant();
        } catch (DateTimeException e) {
            throw new RefusedPayloadException(
                    "the time " + Texts.quoted(text)
                            + " is not ISO 8601 with Z or an offset, as 2026-04-03T06:15:00+02:00",
                    e);
        }
    }
}
