package bagward.watch;

import bagward.alarm.Rule;
import bagward.bag.BagMaterial;
import bagward.bag.MaterialId;
import bagward.climate.ReadingSource;
import bagward.climate.WetnessRule;
import bagward.mould.Crops;
import bagward.mould.Organism;
import bagward.station.Station;
import bagward.store.AlarmStore;
import bagward.store.QuarantineStore;
import bagward.store.ReadingStore;
import bagward.store.RegisterStore;
import java.time.Clock;
import java.util.List;
import java.util.Map;

/**
 * What a watch works with.
 *
 * @param clock the station's clock
 * @param station houses and sensors
 * @param materials bag materials by name
 * @param rules alarm rules
 * @param organisms the mould table
 * @param crops what heads bear and how long they take
 * @param foliage when foliage in a house counts as wet
 * @param readings readings on disk
 * @param quarantine what could not be used
 * @param checks checks of humidity sensors, whose corrections count for all that is derived
 * @param register register changes on disk
 * @param alarms state of the alarms on disk
 */
public record WatchParts(
        Clock clock,
        Station station,
        Map<MaterialId, BagMaterial> materials,
        List<Rule> rules,
        List<Organism> organisms,
        Crops crops,
        WetnessRule foliage,
        ReadingStore readings,
        QuarantineStore quarantine,
        SensorChecks checks,
        RegisterStore register,
        AlarmStore alarms) {
    /** Copies the collections. */
    public WatchParts {
        materials = Map.copyOf(materials);
        rules = List.copyOf(rules);
        organisms = List.copyOf(organisms);
    }

    /** The readings on disk with every correction that holds; for all that is derived. */
    ReadingSource climateReadings() {
        return checks.corrected(readings);
    }
}
