package bagward.mould;

import bagward.units.SeedMoisture;
import java.util.Optional;

/**
 * What can be said of the moisture at which seed comes to rest; always estimated.
 *
 * @param atLeast it is not below this; empty if nothing is known from below
 * @param middle the best value; only where the equation holds
 * @param atMost it is not above this; empty if nothing is known from above
 */
public record MoistureRange(
        Optional<SeedMoisture> atLeast, Optional<SeedMoisture> middle, Optional<SeedMoisture> atMost) {
    /** Nothing is known. */
    public static final MoistureRange UNKNOWN = new MoistureRange(Optional.empty(), Optional.empty(), Optional.empty());

    /** How the range lies to the moisture that seed is stored at. */
    public Dryness against(SeedMoisture limit) {
        if (atMost.filter(most -> most.compareTo(limit) <= 0).isPresent()) {
            return Dryness.DRY_ENOUGH;
        }
        return atLeast.filter(least -> least.compareTo(limit) > 0).isPresent() ? Dryness.TOO_DAMP : Dryness.PERHAPS;
    }

    /** The range in words, % of the moist seed. */
    public String says() {
        if (atLeast.isPresent() && atMost.isPresent()) {
            return Say.format(
                    "%.1f to %.1f %%", atLeast.get().percent(), atMost.get().percent());
        }
        return atLeast.map(least -> Say.format("more than %.1f %%", least.percent()))
                .or(() -> atMost.map(most -> Say.format("less than %.1f %%", most.percent())))
                .orElse("not known");
    }
}
