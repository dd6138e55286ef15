package bagward.mould;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The reference data that a new store is sown with, as tests read it. */
public final class Seeds {
    private Seeds() {}

    static List<Organism> organisms() {
        return OrganismsReader.parse("organisms.yaml", text("organisms.yaml"));
    }

    static List<Crop> crops() {
        return CropsReader.parse("crops.yaml", text("crops.yaml"));
    }

    /** What is known of keeping seed. */
    public static Storage storage() {
        return StorageReader.parse("storage.yaml", text("storage.yaml"));
    }

    /** What pods and bags are in the mould index. */
    public static Surfaces surfaces() {
        return SurfacesReader.parse("surfaces.yaml", text("surfaces.yaml"));
    }

    private static String text(String name) {
        try {
            return Files.readString(Path.of("seeds", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
