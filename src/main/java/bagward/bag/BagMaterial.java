package bagward.bag;

import java.time.Duration;

/**
 * A kind of bag and what is believed of its climate before anything was measured.
 *
 * @param id short name
 * @param name as people call it
 * @param closureByDay closure f by day: share of the vapour exchange that comes from the wet head, 0 to 1
 * @param closureByNight closure f by night
 * @param sunGain k: warming by light, K per (W m⁻²) of global light at the bag
 * @param responseMinutes tau: response time, minutes
 * @param daysOn how long such a bag stays on (common practice)
 * @param source where the values come from, or that they are a prior
 */
public record BagMaterial(
        MaterialId id,
        String name,
        Spread closureByDay,
        Spread closureByNight,
        Spread sunGain,
        Spread responseMinutes,
        Duration daysOn,
        String source) {}
