package bagward.mould;

import bagward.fault.ImpossibleValueException;
import bagward.units.SeedMoisture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of drying and keeping seed: {@code seeds/storage.yaml}.
 *
 * @param oil oil in the seed
 * @param stored how dry seed is stored
 * @param bands fungi by humidity, from the driest on
 * @param bandsSource where the bands come from
 * @param seen what was seen on stored seed
 * @param pace how fast seed may dry
 */
public record Storage(
        OilShare oil,
        StoredMoisture stored,
        List<StorageBand> bands,
        String bandsSource,
        List<StorageObservation> seen,
        DryingPace pace) {
    /** Copies the lists; refuses bands out of order. */
    public Storage {
        bands = List.copyOf(bands);
        seen = List.copyOf(seen);
        for (int i = 1; i < bands.size(); i++) {
            if (bands.get(i).fromPercent() < bands.get(i - 1).toPercent()) {
                throw new ImpossibleValueException("bands from " + bands.get(i).fromPercent()
                        + " %RH are out of order: each must begin where the one before ends, or later");
            }
        }
    }

    /** Each fungus once, with the lowest humidity at which a band names it; the one that needs least first. */
    public List<StorageFungus> fungi() {
        Map<String, StorageFungus> first = new LinkedHashMap<>();
        bands.forEach(band ->
                band.fungi().forEach(name -> first.putIfAbsent(name, new StorageFungus(name, band.fromPercent()))));
        return List.copyOf(first.values());
    }

    /** The fungi that could grow in air of a humidity, %RH. */
    public List<StorageFungus> fungiAt(double percent) {
        return fungi().stream().filter(fungus -> fungus.couldGrowAt(percent)).toList();
    }

    /**
     * How dry seed is stored.
     *
     * @param best where it keeps best
     * @param highest not moister than this
     * @param source where they come from
     */
    public record StoredMoisture(SeedMoisture best, SeedMoisture highest, String source) {
        /** Refuses a best value above the highest. */
        public StoredMoisture {
            if (best.compareTo(highest) > 0) {
                throw new ImpossibleValueException("stored moisture of " + best.percent() + " and at most "
                        + highest.percent() + " % is impossible: the best must not be above the highest");
            }
        }
    }

    /**
     * How fast seed in the head may dry by itself, in points of moisture a day.
     *
     * @param safe did no harm
     * @param harmful reduced viability, in heat
     * @param source who found it
     */
    public record DryingPace(double safe, double harmful, String source) {
        /** Refuses a pace that harms before it is safe. */
        public DryingPace {
            if (!(safe > 0 && safe < harmful)) {
                throw new ImpossibleValueException("a pace of drying of " + safe + " and " + harmful
                        + " % a day is impossible: the safe one is above 0 and below the harmful one");
            }
        }
    }
}
