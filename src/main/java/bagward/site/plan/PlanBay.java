package bagward.site.plan;

import java.util.List;

/**
 * A bench.
 *
 * @param name as people call it
 * @param top the bench top
 * @param labelY base line of its name
 * @param labelSize size of its name, units
 * @param ruler the first number of each row, at the left of the bench
 * @param spots its spots
 */
public record PlanBay(String name, Box top, double labelY, double labelSize, List<Tick> ruler, List<PlanSpot> spots) {
    /** Copies the lists. */
    public PlanBay {
        ruler = List.copyOf(ruler);
        spots = List.copyOf(spots);
    }

    /**
     * A number at the edge.
     *
     * @param text the number
     * @param x right end of the text
     * @param y base line of the text
     * @param size size of the text, units
     */
    public record Tick(String text, double x, double y, double size) {}
}
