package bagward.app;

import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.alarm.RulesReader;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.bag.MaterialId;
import bagward.climate.WetnessRule;
import bagward.collector.BrokerSettings;
import bagward.collector.CollectorReader;
import bagward.collector.CollectorSettings;
import bagward.collector.payload.SensorSource;
import bagward.document.Inspection;
import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.mould.Crop;
import bagward.mould.Crops;
import bagward.notify.DeliveryReader;
import bagward.notify.DeliverySettings;
import bagward.site.SiteSettings;
import bagward.site.WallScreen;
import bagward.station.Station;
import bagward.station.StationReader;
import bagward.watch.KeepingSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the configuration file whole, with every fault in one report, before anything is started. */
final class ConfigurationReader {
    private static final int USUAL_PORT = 8420;
    private static final double USUAL_DAMP_LIMIT = 90;

    private final Path folder;
    private final Secrets secrets;

    /**
     * A reader.
     *
     * @param folder what relative paths in the configuration start from
     * @param environment variables that passwords are taken from
     */
    ConfigurationReader(Path folder, Map<String, String> environment) {
        this.folder = folder;
        this.secrets = new Secrets(environment, this::text);
    }

    /** Reads a file. */
    static Configuration file(Path file, Map<String, String> environment) {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
        try {
            return new ConfigurationReader(folder, environment)
                    .read(String.valueOf(file.getFileName()), Files.readString(file), new Inspection());
        } catch (IOException e) {
            throw new RefusedInputException(List.of(new Fault(
                    file.toString(),
                    "",
                    "cannot be read as UTF-8 text",
                    "Give the path of a configuration file; " + "config/bagward.yaml is an example.")));
        }
    }

    /**
     * Reads a text.
     *
     * @param name name of the document, for messages
     * @param text the document
     * @param inspection takes the faults
     * @throws RefusedInputException with every fault
     */
    Configuration read(String name, String text, Inspection inspection) {
        Section top = Section.parse(name, text, inspection);
        List<Section> sensors = top.sections("sensors", 0);
        Optional<Station> station = StationReader.read(top.section("station"), top.sections("houses", 1), sensors);
        List<SensorSource> sources = CollectorReader.sources(sensors);
        StoreSettings store = StoreSettings.read(top.findSection("store"), folder, secrets);
        KeepingSettings keeping = KeepingReader.read(top.findSection("keeping"), folder);
        Optional<BrokerSettings> broker =
                CollectorReader.broker(top.section("broker"), store.folder().resolve("broker"), folder, secrets);
        Optional<CollectorSettings> collector = CollectorReader.settings(top.findSection("collector"));
        Seeds seeds = Seeds.read(top.findText("seeds").map(folder::resolve));
        Map<MaterialId, BagMaterial> materials = materials(seeds, top);
        List<Rule> rules = rules(seeds, top, station, materials);
        Optional<Crops> crops = crops(seeds, top);
        Optional<WetnessRule> foliage = FoliageReader.read(top.findSection("foliage-wet"));
        Optional<DeliverySettings> deliveries = new DeliveryReader(secrets, folder).read(top);
        SiteSettings site =
                site(top.findSection("page"), materials, crops.map(Crops::all).orElse(List.of()), rules);
        top.make(() -> top);
        inspection.throwIfRefused();
        return new Configuration(
                station.orElseThrow(),
                broker.orElseThrow(),
                collector.orElseThrow(),
                sources,
                materials,
                seeds.organisms(),
                crops.orElseThrow(),
                seeds.surfaces(),
                foliage.orElseThrow(),
                rules,
                store,
                deliveries.orElseThrow(),
                keeping,
                site);
    }

    private Optional<String> text(String file) {
        try {
            return Optional.of(Files.readString(folder.resolve(file)));
        } catch (IOException | InvalidPathException unreadable) {
            return Optional.empty();
        }
    }

    private static Map<MaterialId, BagMaterial> materials(Seeds seeds, Section top) {
        Map<MaterialId, BagMaterial> materials = new LinkedHashMap<>();
        seeds.materials().forEach(m -> materials.put(m.id(), m));
        if (top.has("materials")) {
            BagMaterialsReader.read(top.sections("materials", 1)).forEach(m -> materials.put(m.id(), m));
        }
        return materials;
    }

    private static Optional<Crops> crops(Seeds seeds, Section top) {
        Map<String, Crop> byName = new LinkedHashMap<>();
        seeds.crops().forEach(crop -> byName.put(crop.id().value(), crop));
        Optional<Crop> usual = top.has("crop")
                ? top.choice("crop", byName)
                : Optional.of(seeds.crops().get(0));
        return usual.map(crop -> new Crops(crop, seeds.crops(), seeds.storage()));
    }

    private static List<Rule> rules(
            Seeds seeds, Section top, Optional<Station> station, Map<MaterialId, BagMaterial> materials) {
        if (!top.has("rules")) {
            return seeds.rules();
        }
        RulesReader reader = new RulesReader(
                // Where the station was refused, its houses are not known and not asked for.
                house -> station.map(s -> s.findHouse(house).isPresent()).orElse(true),
                materials::containsKey,
                crop -> seeds.crops().stream().anyMatch(known -> known.id().equals(crop)));
        return reader.changed(seeds.rules(), top.sections("rules", 1));
    }

    private static SiteSettings site(
            Optional<Section> page, Map<MaterialId, BagMaterial> materials, List<Crop> crops, List<Rule> rules) {
        double damp = rules.stream()
                .filter(r -> r.kind() == RuleKind.BAG_DAMP)
                .mapToDouble(Rule::limit)
                .min()
                .orElse(USUAL_DAMP_LIMIT);
        List<BagMaterial> choices = materials.values().stream().toList();
        SiteSettings usual = new SiteSettings("127.0.0.1", USUAL_PORT, WallScreen.USUAL, choices, crops, damp);
        return page.flatMap(section -> {
                    String host = section.text("host", usual.host());
                    int port = section.whole("port", 0, 65_535, "", USUAL_PORT);
                    double distance = section.number("wall-distance", 0.5, 20, "m", 5);
                    double diagonal = section.number("wall-diagonal", 7, 150, "inches", 55);
                    return section.make(() ->
                            new SiteSettings(host, port, new WallScreen(distance, diagonal), choices, crops, damp));
                })
                .orElse(usual);
    }
}
