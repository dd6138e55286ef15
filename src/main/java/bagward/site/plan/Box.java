package bagward.site.plan;

/**
 * A rectangle on the plan, in its units, y downwards.
 *
 * @param x left
 * @param y top
 * @param width to the right
 * @param height downwards
 */
public record Box(double x, double y, double width, double height) {
    /** Right edge. */
    public double right() {
        return x + width;
    }

    /** Lower edge. */
    public double bottom() {
        return y + height;
    }

    /** Middle from left to right. */
    public double middle() {
        return x + width / 2;
    }
}
