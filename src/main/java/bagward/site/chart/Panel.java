package bagward.site.chart;

import java.util.List;

/**
 * One panel of a chart, as path data.
 *
 * @param title quantity and unit
 * @param frame where it lies
 * @param values labelled values at the left
 * @param house the thin line of the house
 * @param measured the solid line of the bag
 * @param estimated the dashed line of the bag
 * @param band the interval of the estimate
 * @param limitY where the limit line lies; NaN if there is none
 * @param limitText its label
 * @param wet strips of time with water on the film, at the lower edge
 * @param houseEnd label at the end of the house line
 * @param bagEnd label at the end of the bag line
 */
public record Panel(
        String title,
        Frame frame,
        List<Label> values,
        String house,
        String measured,
        String estimated,
        String band,
        double limitY,
        String limitText,
        String wet,
        Label houseEnd,
        Label bagEnd) {
    /** Copies the list. */
    public Panel {
        values = List.copyOf(values);
    }

    /** Whether there is a limit line. */
    public boolean limited() {
        return !Double.isNaN(limitY);
    }

    /**
     * A text at a place.
     *
     * @param x units
     * @param y units
     * @param text what it says; empty if there is nothing to label
     */
    public record Label(double x, double y, String text) {}
}
