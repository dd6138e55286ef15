package bagward.app;

import bagward.alarm.Rule;
import bagward.bag.BagMaterial;
import bagward.bag.MaterialId;
import bagward.climate.WetnessRule;
import bagward.collector.BrokerSettings;
import bagward.collector.CollectorSettings;
import bagward.collector.payload.SensorSource;
import bagward.mould.Crops;
import bagward.mould.Organism;
import bagward.mould.Surfaces;
import bagward.notify.DeliverySettings;
import bagward.site.SiteSettings;
import bagward.station.Station;
import bagward.watch.KeepingSettings;
import bagward.watch.rehearsal.RehearsedStation;
import java.util.List;
import java.util.Map;

/**
 * Everything that is configured, checked whole.
 *
 * @param station houses and sensors
 * @param broker where messages come from
 * @param collector how they are collected
 * @param sources how each sensor is heard
 * @param materials bag materials by name: those of the seeds, and those of the configuration in their place
 * @param organisms the mould table of the seeds
 * @param crops what heads bear and how long they take: those of the seeds, with the usual one of the station
 * @param surfaces what mould grows on: that of the seeds
 * @param foliage when foliage in a house counts as wet
 * @param rules alarm rules: those of the seeds, and those of the configuration in their place
 * @param store where things are kept
 * @param deliveries what is delivered, to whom and how
 * @param keeping how long what is kept, and how it is copied
 * @param site address of the pages and size of the wall screen
 */
record Configuration(
        Station station,
        BrokerSettings broker,
        CollectorSettings collector,
        List<SensorSource> sources,
        Map<MaterialId, BagMaterial> materials,
        List<Organism> organisms,
        Crops crops,
        Surfaces surfaces,
        WetnessRule foliage,
        List<Rule> rules,
        StoreSettings store,
        DeliverySettings deliveries,
        KeepingSettings keeping,
        SiteSettings site) {
    Configuration {
        sources = List.copyOf(sources);
        materials = Map.copyOf(materials);
        organisms = List.copyOf(organisms);
        rules = List.copyOf(rules);
    }

    /** What a rehearsal needs of it, whatever rules it tries. */
    RehearsedStation rehearsedStation() {
        return new RehearsedStation(station, materials, organisms, crops);
    }
}
