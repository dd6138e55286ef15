package bagward.site.plan;

import bagward.board.HouseView;
import java.util.List;

/**
 * A house outline with its benches.
 *
 * @param name as people call it
 * @param outline its glass wall
 * @param head the strip above it, for its name and climate
 * @param strip its climate in words and lines
 * @param bays its benches
 */
public record PlanHouse(String name, Box outline, Box head, HouseStrip strip, List<PlanBay> bays) {
    /** Copies the list. */
    public PlanHouse {
        bays = List.copyOf(bays);
    }

    static PlanHouse of(HouseView house, Box outline, Box head, List<PlanBay> bays) {
        return new PlanHouse(house.house().name(), outline, head, HouseStrip.of(house, head), bays);
    }
}
