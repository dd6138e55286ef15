package bagward.site.plan;

/**
 * The paper that a plan is drawn on.
 *
 * @param width units
 * @param height units; infinite for a page that scrolls
 * @param head height of the strip with name and climate above each house, units
 * @param label height of the strip with the name below each bay, units
 * @param largestSpot widest a spot may become, units
 */
public record Sheet(double width, double height, double head, double label, double largestSpot) {
    /** For a wall screen of 16:9, beside the list: one unit is one pixel of a screen 1920 wide. */
    public static final Sheet WALL = new Sheet(1250, 890, 122, 34, 110);

    /** For a desk page. */
    public static final Sheet DESK = new Sheet(760, Double.POSITIVE_INFINITY, 72, 24, 45);

    /** For a phone held upright. */
    public static final Sheet PHONE = new Sheet(360, Double.POSITIVE_INFINITY, 74, 24, 52);

    /** The same paper with smaller heads and labels. */
    Sheet withHead(double share) {
        return new Sheet(width, height, head * share, Math.max(12, label * share), largestSpot);
    }
}
