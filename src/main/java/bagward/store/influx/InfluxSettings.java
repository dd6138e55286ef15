package bagward.store.influx;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the readings are kept.
 *
 * @param url http or https address of the server
 * @param database name of the database
 * @param retentionPolicy the retention policy in it; the database's own default if left out
 * @param login who Bagward is there; nobody where the server asks for no user
 * @param caFile certificates (PEM) to trust in place of those of Java
 */
public record InfluxSettings(
        String url,
        String database,
        Optional<String> retentionPolicy,
        Optional<InfluxLogin> login,
        Optional<Path> caFile) {}
