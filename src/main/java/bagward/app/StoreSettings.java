package bagward.app;

import bagward.document.Secrets;
import bagward.document.Section;
import bagward.store.influx.InfluxSettings;
import bagward.store.influx.InfluxSettingsReader;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where things are kept.
 *
 * @param folder where database, spool and the broker's messages lie
 * @param spoolMegabytes most that may wait on disk while the store of readings is away, MB
 * @param influx where the readings are kept instead of in the folder, if they are
 */
record StoreSettings(Path folder, int spoolMegabytes, Optional<InfluxSettings> influx) {
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
     * @param secrets passwords and tokens
     */
    static StoreSettings read(Optional<Section> store, Path base, Secrets secrets) {
        StoreSettings usual = new StoreSettings(base.resolve(USUAL_FOLDER), USUAL_SPOOL, Optional.empty());
        return store.flatMap(section -> {
                    Path folder = base.resolve(section.text("folder", USUAL_FOLDER));
                    int spool = section.whole("spool-limit", 1, 100_000, "MB", USUAL_SPOOL);
                    Optional<InfluxSettings> influx = section.findSection("influxdb")
                            .flatMap(keys -> InfluxSettingsReader.read(keys, base, secrets));
                    return section.make(() -> new StoreSettings(folder, spool, influx));
                })
                .orElse(usual);
    }
}
