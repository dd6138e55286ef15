package bagward.site.chart;

import java.util.List;

/**
 * A chart of one bag: panels below each other on one time axis.
 *
 * @param width units
 * @param height units
 * @param panels temperature, humidity, light
 * @param dark strips of time without light in the house, over all panels
 * @param times labelled times
 * @param timesY base line of the time labels
 */
public record Chart(
        double width, double height, List<Panel> panels, String dark, List<Panel.Label> times, double timesY) {
    /** Copies the lists. */
    public Chart {
        panels = List.copyOf(panels);
        times = List.copyOf(times);
    }
}
