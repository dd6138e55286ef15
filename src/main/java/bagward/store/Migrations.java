package bagward.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.resource.LoadableResource;
import org.jspecify.annotations.Nullable;

/** The schema's versions, oldest first, named one by one so that nothing has to search the jar for them. */
final class Migrations implements ResourceProvider {
    private static final String FOLDER = "migration/";

    private static final List<String> NAMES = List.of(
            "V1__readings_quarantine_register_alarms.sql", //
            "V3__outbox.sql", //
            "V4__pollen_scores.sql", //
            "V5__summaries.sql", //
            "V6__sensor_checks.sql", //
            "V9__subscriptions.sql");

    /** Version of the newest one. */
    static int newest() {
        return NAMES.stream().mapToInt(Migrations::version).max().orElse(0);
    }

    private static int version(String name) {
        return Integer.parseInt(name.substring(1, name.indexOf("__")));
    }

    /** The script of a name; null for others, such as the settings that may stand beside a script. */
    @Override
    public @Nullable LoadableResource getResource(String name) {
        return NAMES.contains(name) ? new Script(name, text(name)) : null;
    }

    @Override
    public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
        return NAMES.stream()
                .filter(name -> name.startsWith(prefix) && Stream.of(suffixes).anyMatch(name::endsWith))
                .<LoadableResource>map(name -> new Script(name, text(name)))
                .toList();
    }

    private static String text(String name) {
        try (InputStream in = Migrations.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + FOLDER + name + " is missing in it");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
