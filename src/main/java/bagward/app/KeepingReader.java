package bagward.app;

import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import bagward.watch.KeepingSettings;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;

/** Reads the mapping {@code keeping}: how long what is kept, and how it is copied. */
final class KeepingReader {
    private static final Duration LONGEST = Duration.ofDays(36_500);
    private static final LocalTime USUAL_TIME = LocalTime.of(2, 30);

    private KeepingReader() {}

    /**
     * Reads the mapping.
     *
     * @param keeping the mapping, if there is one
     * @param base what relative paths start from
     */
    static KeepingSettings read(Optional<Section> keeping, Path base) {
        KeepingSettings usual = KeepingSettings.USUAL;
        return keeping.flatMap(section -> {
                    Duration readings =
                            section.duration("readings", KeepingSettings.SHORTEST, LONGEST, usual.readings());
                    Optional<KeepingSettings.Backup> backup =
                            section.findSection("backup").flatMap(below -> backup(below, base));
                    return section.make(() -> new KeepingSettings(readings, backup));
                })
                .orElse(usual);
    }

    private static Optional<KeepingSettings.Backup> backup(Section backup, Path base) {
        Path folder = base.resolve(backup.text("folder"));
        LocalTime at = backup.findValue("at", KeepingReader::time).orElse(USUAL_TIME);
        int copies = backup.whole("copies", 1, 1000, "", 7);
        return backup.make(() -> new KeepingSettings.Backup(folder, at, copies));
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeException e) {
            throw new ImpossibleValueException("must be a time of the day with two digits each, as \"02:30\"");
        }
    }
}
