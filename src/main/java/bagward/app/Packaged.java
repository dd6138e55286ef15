package bagward.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files of the repository's {@code seeds}, {@code config} and {@code demo-data} folders as they were packed. */
final class Packaged {
    private Packaged() {}

    /**
     * The text of a packed file.
     *
     * @param path path from the top of the repository, such as {@code seeds/organisms.yaml}
     */
    static String text(String path) {
        try (InputStream in = Packaged.class.getResourceAsStream("/bagward/packaged/" + path)) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
