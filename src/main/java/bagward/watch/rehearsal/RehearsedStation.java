package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import bagward.bag.BagMaterial;
import bagward.bag.MaterialId;
import bagward.bag.Register;
import bagward.board.BoardInputs;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.mould.Crops;
import bagward.mould.Organism;
import bagward.station.Station;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What stays the same whatever rules are tried.
 *
 * @param station houses and sensors
 * @param materials bag materials by name
 * @param organisms the mould table
 * @param crops what the heads bear
 */
public record RehearsedStation(
        Station station, Map<MaterialId, BagMaterial> materials, List<Organism> organisms, Crops crops) {
    /** Copies the collections. */
    public RehearsedStation {
        materials = Map.copyOf(materials);
        organisms = List.copyOf(organisms);
    }

    /** What boards of that past would have been a function of. */
    BoardInputs inputs(Instant end, Register register, ReadingSource readings, List<Rule> rules) {
        return new BoardInputs(end, station, register, materials, readings, rules, organisms, crops);
    }

    /** All series of its sensors. */
    public List<SeriesId> series() {
        return station.sensors().stream()
                .flatMap(sensor -> sensor.series().stream())
                .toList();
    }
}
