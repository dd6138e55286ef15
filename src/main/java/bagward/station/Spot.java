package bagward.station;

import bagward.units.Checks;
import java.util.Comparator;

/**
 * A numbered place on a bay.
 *
 * @param house the house
 * @param bay the bay in that house
 * @param number 1 to the number of spots of the bay
 */
public record Spot(HouseId house, BayId bay, int number) implements Comparable<Spot> {
    private static final Comparator<Spot> WALKING_ORDER =
            Comparator.comparing(Spot::house).thenComparing(Spot::bay).thenComparingInt(Spot::number);

    /** Refuses numbers below 1 and above 999. */
    public Spot {
        Checks.within("spot number", number, 1, 999, "");
    }

    @Override
    public int compareTo(Spot other) {
        return WALKING_ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return house + "/" + bay + "/" + number;
    }
}
