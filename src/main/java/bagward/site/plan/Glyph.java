package bagward.site.plan;

import bagward.site.view.Mark;
import bagward.site.view.Standing;

/**
 * How a bag is drawn: its shape by how it stands, its mark by what is the matter, its outline by how that is known.
 *
 * @param tag code of the head
 * @param standing how it stands
 * @param mark what is the matter
 * @param measured solid outline if measured, dashed if estimated
 * @param fresh whether nobody has confirmed its alarm yet
 * @param value the value that is wrong, with unit; empty when all is well
 * @param words all of it in one sentence
 */
public record Glyph(
        String tag, Standing standing, Mark mark, boolean measured, boolean fresh, String value, String words) {
    /** Outline of the shape as SVG path data, in a cell 100 wide and 116 high. */
    public String outline() {
        return switch (standing) {
            case QUIET -> "M33 24H67L70 90Q50 97 30 90Z";
            case NOTE -> "M16 12H84Q90 12 90 18V80Q90 86 84 86H16Q10 86 10 80V18Q10 12 16 12Z";
            case ABNORMAL -> "M50 -1L99 48L50 97L1 48Z";
            case ACT -> "M50 -6Q53 -6 55 -2L101 82Q104 90 96 90H4Q-4 90 -1 82L45 -2Q47 -6 50 -6Z";
        };
    }

    /** How far down the mark stands in the shape. */
    public double markY() {
        return switch (standing) {
            case QUIET -> 62;
            case NOTE -> 49;
            case ABNORMAL -> 48;
            case ACT -> 58;
        };
    }

    /** How large the mark is drawn. */
    public double markScale() {
        return standing == Standing.QUIET ? 0.55 : 1.0;
    }
}
