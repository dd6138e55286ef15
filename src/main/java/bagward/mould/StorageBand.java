package bagward.mould;

import bagward.fault.ImpossibleValueException;
import bagward.units.SeedMoisture;
import java.util.List;

/**
 * A band of humidity and the fungi that take over stored seed in it.
 *
 * @param fromPercent where it begins, %RH
 * @param toPercent where the next one begins, %RH
 * @param fungi names of the fungi
 * @param driest moisture of oily seed at its lower end
 * @param moistest moisture of oily seed at its upper end
 */
public record StorageBand(
        double fromPercent, double toPercent, List<String> fungi, SeedMoisture driest, SeedMoisture moistest) {
    /** Copies the list; refuses a band that ends before it begins. */
    public StorageBand {
        fungi = List.copyOf(fungi);
        if (!(fromPercent < toPercent) || driest.compareTo(moistest) > 0) {
            throw new ImpossibleValueException("a band from " + fromPercent + " to " + toPercent + " %RH with seed of "
                    + driest.percent() + " to " + moistest.percent() + " % is impossible: both must rise");
        }
    }
}
