package bagward.board;

import bagward.bag.Sky;
import bagward.climate.ClearSky;
import bagward.climate.Site;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Clear-sky light of a site, computed every ten minutes and straight between: many bags ask for the same minutes. Used
 * within one pass by one thread.
 */
final class ClearSkyTable implements Sky {
    private static final long STEP_SECONDS = 600;

    private final Site site;
    private final Map<Long, Double> atSteps = new HashMap<>();

    ClearSkyTable(Site site) {
        this.site = site;
    }

    @Override
    public double clearGlobalLight(Instant at) {
        long step = Math.floorDiv(at.getEpochSecond(), STEP_SECONDS);
        double share = Math.floorMod(at.getEpochSecond(), STEP_SECONDS) / (double) STEP_SECONDS;
        return (1 - share) * atStep(step) + share * atStep(step + 1);
    }

    private double atStep(long step) {
        return atSteps.computeIfAbsent(
                step,
                missing -> ClearSky.global(site, Instant.ofEpochSecond(missing * STEP_SECONDS))
                        .wattsPerSquareMetre());
    }
}
