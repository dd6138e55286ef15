package bagward.station;

import bagward.units.Checks;

/**
 * A bench or table in a house, seen from above.
 *
 * @param id short name, unique in its house
 * @param name as people call it
 * @param spots how many numbered places it has, 1 to 999
 * @param across how many spots lie side by side in one row, 1 to spots; spot 1 is at the near left, numbers run along
 *     the row
 */
public record Bay(BayId id, String name, int spots, int across) {
    /** Refuses an empty bay and rows wider than the bay. */
    public Bay {
        Checks.within("spots of bay " + id, spots, 1, 999, "");
        Checks.within("spots across bay " + id, across, 1, spots, "");
    }
}
