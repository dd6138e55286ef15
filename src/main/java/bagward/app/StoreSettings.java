package bagward.app;

import bagward.document.Section;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where things are kept.
 *
 * @param folder where database, spool and the broker's messages lie
 * @param spoolMegabytes most that may wait on disk while the store of readings is away, MB
 */
record StoreSettings(Path folder, int spoolMegabytes) {
    private static final String USUAL_FOLDER = "bagward-data";
    private static final int USUAL_SPOOL = 256;

    /** Most bytes of the spool. */
    long spoolBytes() {
        return (long) spoolMegabytes << 20;
    }

    /**
     * Reads the mapping {@code store}.
     *
     * @param store the mapping, if there is one
     * @param base what relative paths start from
     */
    static StoreSettings read(Optional<Section> store, Path base) {
        StoreSettings usual = new StoreSettings(base.resolve(USUAL_FOLDER), USUAL_SPOOL);
        return store.flatMap(section -> {
                    Path folder = base.resolve(section.text("folder", USUAL_FOLDER));
                    int spool = section.whole("spool-limit", 1, 100_000, "MB", USUAL_SPOOL);
                    return section.make(() -> new StoreSettings(folder, spool));
                })
                .orElse(usual);
    }
}
