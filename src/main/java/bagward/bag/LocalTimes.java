package bagward.bag;

import bagward.fault.BagwardException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/**
 * Times as people write them: ISO 8601 date and time, 'T' or a space between them, with an offset or in the zone of the
 * station. When the clocks change, a local time that does not exist or exists twice is refused, since a guess would
 * shift a bag by an hour.
 *
 * @param zone zone of times without an offset
 */
record LocalTimes(ZoneId zone) {
    /**
     * Reads one time.
     *
     * @throws UnclearTimeException with the rule that was broken
     */
    Instant read(String text) {
        String iso = text.replaceFirst(" +", "T");
        try {
            return OffsetDateTime.parse(iso).toInstant();
        } catch (DateTimeException noOffset) {
            return local(iso);
        }
    }

    private Instant local(String iso) {
        LocalDateTime time;
        try {
            time = LocalDateTime.parse(iso);
        } catch (DateTimeException unreadable) {
            throw new UnclearTimeException(
                    "is no time: allowed is 2026-05-01T07:30, with an offset such as +02:00 or in zone " + zone, "");
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(time);
        if (offsets.isEmpty()) {
            throw new UnclearTimeException(
                    "this time does not exist in zone " + zone + ": the clocks go forward", "Look at the time again.");
        }
        if (offsets.size() > 1) {
            throw new UnclearTimeException(
                    "this time occurs twice in zone " + zone + ": the clocks go back",
                    "Write " + time + offsets.get(0) + " or " + time + offsets.get(1) + ".");
        }
        return time.toInstant(offsets.get(0));
    }

    /** A text that is no single instant. */
    static final class UnclearTimeException extends BagwardException {
        private static final long serialVersionUID = 1L;

        private final String remedy;

        UnclearTimeException(String rule, String remedy) {
            super(rule, null);
            this.remedy = remedy;
        }

        String remedy() {
            return remedy;
        }
    }
}
