package bagward.site.plan;

import java.util.Optional;

/**
 * A spot on a bench.
 *
 * @param number its number
 * @param x left edge of its cell, units of the plan
 * @param y top edge of its cell
 * @param scale size of its cell: 1 for 100 units of width
 * @param glyph the bag that is on there
 */
public record PlanSpot(int number, double x, double y, double scale, Optional<Glyph> glyph) {}
