package bagward.app;

import bagward.alarm.Rule;
import bagward.alarm.RulesReader;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.mould.Crop;
import bagward.mould.CropsReader;
import bagward.mould.Organism;
import bagward.mould.OrganismsReader;
import bagward.mould.Storage;
import bagward.mould.StorageReader;
import bagward.mould.Surfaces;
import bagward.mould.SurfacesReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The reference data that a station starts with.
 *
 * @param materials bag materials
 * @param organisms the mould table
 * @param crops what heads bear and how long they take, the usual one first
 * @param storage drying and keeping of seed
 * @param surfaces what mould grows on
 * @param rules alarm rules
 */
record Seeds(
        List<BagMaterial> materials,
        List<Organism> organisms,
        List<Crop> crops,
        Storage storage,
        Surfaces surfaces,
        List<Rule> rules) {
    Seeds {
        materials = List.copyOf(materials);
        organisms = List.copyOf(organisms);
        crops = List.copyOf(crops);
        rules = List.copyOf(rules);
    }

    /**
     * Reads the seeds.
     *
     * @param folder a folder with bag-materials.yaml, organisms.yaml, crops.yaml, storage.yaml, surfaces.yaml and
     *     rules.yaml; files that it lacks, or all if there is no folder, are those that came with the program
     * @throws RefusedInputException with every fault of a file
     */
    static Seeds read(Optional<Path> folder) {
        return new Seeds(
                materials(text(folder, "bag-materials.yaml")),
                OrganismsReader.parse("organisms.yaml", text(folder, "organisms.yaml")),
                CropsReader.parse("crops.yaml", text(folder, "crops.yaml")),
                StorageReader.parse("storage.yaml", text(folder, "storage.yaml")),
                SurfacesReader.parse("surfaces.yaml", text(folder, "surfaces.yaml")),
                rules(text(folder, "rules.yaml")));
    }

    private static List<BagMaterial> materials(String text) {
        Inspection inspection = new Inspection();
        List<BagMaterial> materials = BagMaterialsReader.read(Section.parse("bag-materials.yaml", text, inspection));
        inspection.throwIfRefused();
        return materials;
    }

    private static List<Rule> rules(String text) {
        Inspection inspection = new Inspection();
        Section top = Section.parse("rules.yaml", text, inspection);
        List<Rule> rules = RulesReader.read(top.sections("rules", 1));
        top.make(() -> rules);
        inspection.throwIfRefused();
        return rules;
    }

    private static String text(Optional<Path> folder, String name) {
        Optional<Path> file = folder.map(f -> f.resolve(name)).filter(Files::isRegularFile);
        if (file.isEmpty()) {
            return Packaged.text("seeds/" + name);
        }
        try {
            return Files.readString(file.get());
        } catch (IOException e) {
            throw new RefusedInputException(
                    List.of(Fault.of(file.get().toString(), "", "cannot be read as UTF-8 text: " + e.getMessage())));
        }
    }
}
