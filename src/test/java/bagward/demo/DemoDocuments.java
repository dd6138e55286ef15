package bagward.demo;

import bagward.alarm.Rule;
import bagward.alarm.RulesReader;
import bagward.bag.BagCsv;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.bag.MaterialId;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.collector.CollectorReader;
import bagward.collector.payload.SensorSource;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.mould.Crop;
import bagward.mould.Crops;
import bagward.mould.CropsReader;
import bagward.mould.Organism;
import bagward.mould.OrganismsReader;
import bagward.mould.StorageReader;
import bagward.station.Station;
import bagward.station.StationReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The demo's documents and the seeds, read as the program reads them. */
final class DemoDocuments {
    private final Inspection inspection = new Inspection();
    private final Station station;
    private final List<SensorSource> sources;

    DemoDocuments() {
        Section top = Section.parse("demo.yaml", DemoStation.configuration(), inspection);
        List<Section> sensors = top.sections("sensors", 1);
        station = StationReader.read(top.section("station"), top.sections("houses", 1), sensors)
                .orElseThrow(() -> new AssertionError(inspection.faults().toString()));
        sources = CollectorReader.sources(sensors);
        top.make(() -> station);
        inspection.throwIfRefused();
    }

    Station station() {
        return station;
    }

    List<SensorSource> sources() {
        return sources;
    }

    Map<MaterialId, BagMaterial> materials() {
        return BagMaterialsReader.read(seed("bag-materials.yaml")).stream()
                .collect(Collectors.toMap(BagMaterial::id, Function.identity()));
    }

    List<Rule> rules() {
        return RulesReader.read(seed("rules.yaml").sections("rules", 1));
    }

    List<Organism> organisms() {
        return OrganismsReader.parse("organisms.yaml", text("organisms.yaml"));
    }

    Crops crops() {
        List<Crop> all = CropsReader.parse("crops.yaml", text("crops.yaml"));
        return new Crops(all.get(0), all, StorageReader.parse("storage.yaml", text("storage.yaml")));
    }

    List<RegisterChange> changes() {
        List<RegisterChange> changes = new ArrayList<>(new BagCsv(station.zone()).read(DemoStation.bags()));
        changes.addAll(DemoStation.furtherChanges());
        return changes;
    }

    Register register() {
        return new RegisterRules(station, materials().keySet()).apply(Register.EMPTY, changes());
    }

    private Section seed(String name) {
        return Section.parse(name, text(name), inspection);
    }

    private static String text(String name) {
        try {
            return Files.readString(Path.of("seeds", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
