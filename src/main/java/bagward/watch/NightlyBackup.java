package bagward.watch;

import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.store.StoreException;
import bagward.store.StoreFiles;
import bagward.store.StoreReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Copies the store once a night and keeps the newest copies. A night that was missed since the station was off is made up
 * for when it runs again. Safe for use by several threads.
 */
public final class NightlyBackup implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(NightlyBackup.class);

    private static final Pattern NAME = Pattern.compile("bagward-\\d{4}-\\d\\d-\\d\\d\\.db");
    private static final Duration LOOK = Duration.ofMinutes(1);

    /** A copy that failed is tried again after this, so that a full disk is not written on each minute. */
    private static final Duration PAUSE = Duration.ofMinutes(30);

    private static final Duration CLOSING = Duration.ofSeconds(10);

    private final Path store;
    private final KeepingSettings.Backup settings;
    private final ZoneId zone;
    private final Clock clock;
    private final Clockwork clockwork =
            new Clockwork("nightly backup", Pause.atMost(Duration.ZERO), this::tryBackup, CLOSING);
    private volatile Health.Part state = new Health.Part("backup", true, "none was due yet");

    /**
     * A backup that is not started yet.
     *
     * @param store the database file
     * @param settings where to, when and how many
     * @param zone the station's zone
     * @param clock the station's clock
     */
    public NightlyBackup(Path store, KeepingSettings.Backup settings, ZoneId zone, Clock clock) {
        this.store = store;
        this.settings = settings;
        this.zone = zone;
        this.clock = clock;
    }

    /** Starts. */
    public void start() {
        clockwork.start();
    }

    /** How it is. */
    public Health.Part state() {
        return state;
    }

    private Pause tryBackup() {
        try {
            Optional<StoreReport> made = backUpIfDue();
            made.ifPresent(report -> LOG.info("The store was copied: {} readings", report.readings()));
            return Pause.atMost(LOOK);
        } catch (StoreException | IOException e) {
            LOG.warn("The store could not be copied; it is tried again: {}", e.getMessage());
            state = new Health.Part("backup", false, "could not be made and is tried again: " + e.getMessage());
            return Pause.atMost(PAUSE);
        }
    }

    /**
     * Makes the copy of the last night that began, if it is not there, and deletes those beyond the number that is kept.
     *
     * @return what the copy holds; empty if none was due
     */
    Optional<StoreReport> backUpIfDue() throws IOException {
        Path copy = settings.folder().resolve("bagward-" + night() + ".db");
        if (Files.exists(copy)) {
            state = new Health.Part("backup", true, "the newest is " + copy.getFileName());
            return Optional.empty();
        }
        StoreReport report = StoreFiles.copy(store, copy, written -> {});
        state = new Health.Part("backup", true, "the newest is " + copy.getFileName());
        for (Path old : beyond(settings.copies())) {
            Files.delete(old);
        }
        return Optional.of(report);
    }

    private LocalDate night() {
        ZonedDateTime now = clock.instant().atZone(zone);
        boolean begun = !now.toLocalTime().isBefore(settings.at());
        return begun ? now.toLocalDate() : now.toLocalDate().minusDays(1);
    }

    /** Only files that have the name of such a copy; others are not ours to delete. */
    private List<Path> beyond(int copies) throws IOException {
        try (Stream<Path> files = Files.list(settings.folder())) {
            List<Path> newestFirst = new ArrayList<>(files.filter(
                            file -> NAME.matcher(file.getFileName().toString()).matches())
                    .sorted(Comparator.comparing(
                                    (Path file) -> file.getFileName().toString())
                            .reversed())
                    .toList());
            return newestFirst.subList(Math.min(copies, newestFirst.size()), newestFirst.size());
        }
    }

    /** Stops after the copy that is under way. */
    @Override
    public void close() {
        clockwork.close();
    }
}
