package bagward.board;

import bagward.alarm.Rule;
import bagward.alarm.SystemState;
import bagward.bag.BagMaterial;
import bagward.bag.MaterialId;
import bagward.bag.Register;
import bagward.climate.ReadingSource;
import bagward.mould.Crops;
import bagward.mould.Organism;
import bagward.station.Station;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * Everything that a board is a function of, but for the alarms.
 *
 * @param now the time the board is made for
 * @param station houses and sensors
 * @param register heads, bags and loans
 * @param materials bag materials by name
 * @param readings all readings; those after {@code now} are not looked at
 * @param rules alarm rules
 * @param organisms the mould table
 * @param crops what heads bear and how long they take
 * @param knowledge what was learnt from lent sensors and past nights
 * @param system how the system itself is
 */
public record BoardInputs(
        Instant now,
        Station station,
        Register register,
        Map<MaterialId, BagMaterial> materials,
        ReadingSource readings,
        List<Rule> rules,
        List<Organism> organisms,
        Crops crops,
        Knowledge knowledge,
        SystemState system) {
    /** Copies the collections, and hides the readings after {@code now}. */
    public BoardInputs {
        readings = new UntilNow(readings, now);
        materials = Map.copyOf(materials);
        rules = List.copyOf(rules);
        organisms = List.copyOf(organisms);
    }

    /** The same with what nobody taught: the priors alone, and no outlook; and with a system that is well. */
    public BoardInputs(
            Instant now,
            Station station,
            Register register,
            Map<MaterialId, BagMaterial> materials,
            ReadingSource readings,
            List<Rule> rules,
            List<Organism> organisms,
            Crops crops) {
        this(now, station, register, materials, readings, rules, organisms, crops, Knowledge.NONE, SystemState.WELL);
    }

    /** The same at an earlier time, with what is known now. */
    BoardInputs until(Instant earlier) {
        return new BoardInputs(
                earlier, station, register, materials, readings, rules, organisms, crops, knowledge, system);
    }
}
