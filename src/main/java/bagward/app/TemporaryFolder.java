package bagward.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder that is deleted with all that is in it when it is closed. */
record TemporaryFolder(Path path) implements AutoCloseable {
    static TemporaryFolder make(String prefix) throws IOException {
        return new TemporaryFolder(Files.createTempDirectory(prefix));
    }

    @Override
    public void close() throws IOException {
        List<Path> inside;
        try (Stream<Path> walk = Files.walk(path)) {
            inside = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : inside) {
            Files.deleteIfExists(file);
        }
    }
}
