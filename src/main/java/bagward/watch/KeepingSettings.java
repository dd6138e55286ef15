package bagward.watch;

import bagward.fault.ImpossibleValueException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;

/**
 * How long what is kept, and how it is copied.
 *
 * @param readings how long single readings are kept; their summaries stay for ever
 * @param backup the nightly backup, if one is wanted
 */
public record KeepingSettings(Duration readings, Optional<Backup> backup) {
    /** Boards look back weeks; what they need must not go. */
    public static final Duration SHORTEST = Duration.ofDays(60);

    /** Two seasons, so that one can be held against the other. */
    public static final KeepingSettings USUAL = new KeepingSettings(Duration.ofDays(730), Optional.empty());

    /** Refuses a time that is too short for boards and for what lent sensors teach. */
    public KeepingSettings {
        if (readings.compareTo(SHORTEST) < 0) {
            throw new ImpossibleValueException("readings kept for " + readings.toDays()
                    + " d are too few for boards and estimates: keep them for at least " + SHORTEST.toDays() + " d");
        }
    }

    /**
     * A backup each night.
     *
     * @param folder where the copies go; best on another disk
     * @param at when, in the station's zone
     * @param copies how many are kept, at least 1
     */
    public record Backup(Path folder, LocalTime at, int copies) {}
}
