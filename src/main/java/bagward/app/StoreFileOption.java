package bagward.app;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which store a command works on. */
final class StoreFileOption {
    /** Name of the database in the store folder. */
    static final String DATABASE = "bagward.db";

    @Option(
            names = "--config",
            paramLabel = "FILE",
            description = "Configuration of the station whose store it is; bagward.yaml if left out.")
    private Path configuration = Path.of("bagward.yaml");

    /** The database file of the station. */
    Path database() {
        return ConfigurationReader.file(configuration, System.getenv())
                .store()
                .folder()
                .resolve(DATABASE);
    }
}
