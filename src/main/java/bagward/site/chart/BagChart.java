package bagward.site.chart;

import bagward.bag.BagClimate;
import bagward.bag.Banded;
import bagward.bag.Origin;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.site.view.Words;
import bagward.watch.BagHistory;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Draws what a bag went through. */
public final class BagChart {
    /** Light below this is dark, µmol m⁻² s⁻¹. */
    private static final double DARK = 1;

    private static final double LEFT = 40;
    private static final double RIGHT = 54;
    private static final double GAP = 40;
    private static final double TOP = 26;

    private final BagHistory history;
    private final ZoneId zone;
    private final double dampLimit;
    private final Instant from;
    private final Instant to;
    private final double width;

    private BagChart(BagHistory history, ZoneId zone, double dampLimit, Instant from, double width) {
        this.history = history;
        this.zone = zone;
        this.dampLimit = dampLimit;
        this.from = from;
        this.to = history.bag().grid().end();
        this.width = width;
    }

    /**
     * The chart of a history.
     *
     * @param history house and bag climate
     * @param zone zone of the time axis
     * @param dampLimit limit line of the humidity, %RH
     * @param from first instant to show; its end is that of the history
     * @param width units; text is drawn 12 to 13 units high
     */
    public static Chart draw(BagHistory history, ZoneId zone, double dampLimit, Instant from, double width) {
        return new BagChart(history, zone, dampLimit, from, width).chart();
    }

    private Chart chart() {
        double high = width < 500 ? 120 : 150;
        double low = width < 500 ? 60 : 70;
        Panel temperature = temperature(TOP, high);
        Panel humidity = humidity(temperature.frame().bottom() + GAP, high);
        Panel light = light(humidity.frame().bottom() + GAP, low);
        double timesY = light.frame().bottom() + 18;
        RegularSeries sun = history.house().light();
        String dark = new Trace(light.frame(), sun.grid())
                .strips(
                        i -> dark(sun, i),
                        temperature.frame().top(),
                        light.frame().bottom());
        List<Panel.Label> times = TimeAxis.labels(light.frame(), zone, timesY);
        return new Chart(width, timesY + 10, List.of(temperature, humidity, light), dark, times, timesY);
    }

    private Panel temperature(double top, double height) {
        Banded bag = history.bag().temperature();
        RegularSeries house = history.house().temperature();
        Scale scale = scale(List.of(bag.low(), bag.high(), house), 8);
        return bagPanel("Temperature, °C", frame(top, height, scale), scale, house, bag, Double.NaN, "");
    }

    private Panel humidity(double top, double height) {
        Banded bag = history.bag().humidity();
        RegularSeries house = history.house().humidity();
        Scale scale = Scale.ofHumidity(scale(List.of(bag.low(), bag.high(), house), 40));
        String limit = Scale.dampText(dampLimit);
        return bagPanel("Relative humidity, %", frame(top, height, scale), scale, house, bag, dampLimit, limit);
    }

    private Panel bagPanel(
            String title, Frame frame, Scale scale, RegularSeries house, Banded bag, double limit, String limitText) {
        BagClimate climate = history.bag();
        Trace trace = new Trace(frame, climate.grid());
        IntPredicate measured = i -> climate.originAt(i) == Origin.MEASURED;
        boolean limited = !Double.isNaN(limit);
        String wet = limited ? trace.strips(climate::filmWetAt, frame.bottom() - 5, frame.bottom()) : "";
        Panel.Label houseEnd = end(frame, house, "house");
        Panel.Label bagEnd = end(frame, bag.middle(), "bag");
        return new Panel(
                title,
                frame,
                values(frame, scale),
                new Trace(frame, house.grid()).line(house, i -> true),
                trace.line(bag.middle(), measured),
                trace.line(bag.middle(), measured.negate()),
                trace.band(bag.low(), bag.high(), measured.negate()),
                limited ? frame.y(limit) : Double.NaN,
                limitText,
                wet,
                apart(houseEnd, bagEnd),
                bagEnd);
    }

    private Panel light(double top, double height) {
        RegularSeries light = history.house().light();
        Scale scale = scale(List.of(light), 100);
        Frame frame = frame(top, height, scale);
        String line = new Trace(frame, light.grid()).line(light, i -> true);
        List<Panel.Label> values = values(frame, new Scale(scale.low(), scale.high(), scale.high() - scale.low()));
        Panel.Label none = new Panel.Label(0, 0, "");
        return new Panel(
                "Light in the house, µmol m⁻² s⁻¹", frame, values, line, "", "", "", Double.NaN, "", "", none, none);
    }

    private Scale scale(List<RegularSeries> series, double smallestSpan) {
        TimeGrid grid = history.bag().grid();
        return Scale.covering(series, grid.indexOf(from), grid.size(), smallestSpan);
    }

    private Frame frame(double top, double height, Scale scale) {
        return new Frame(LEFT, top, width - LEFT - RIGHT, height, from, to, scale.low(), scale.high());
    }

    /** Whether cell i of a light is known to be dark. */
    static boolean dark(RegularSeries light, int i) {
        return light.known(i) && light.valueOrNaN(i) < DARK;
    }

    /** Labels of a scale at the left of a frame. */
    static List<Panel.Label> values(Frame frame, Scale scale) {
        List<Panel.Label> labels = new ArrayList<>();
        scale.labels().forEach(v -> labels.add(new Panel.Label(LEFT - 6, frame.y(v), Words.whole(v))));
        return labels;
    }

    /** The name of a line where it ends; nothing if it has no value. */
    static Panel.Label end(Frame frame, RegularSeries series, String name) {
        for (int i = series.grid().size() - 1; i >= 0; i--) {
            if (series.known(i)) {
                return new Panel.Label(frame.right() + 6, frame.y(series.valueOrNaN(i)) + 4, name);
            }
        }
        return new Panel.Label(0, 0, "");
    }

    private static Panel.Label apart(Panel.Label moved, Panel.Label fixed) {
        double distance = moved.y() - fixed.y();
        if (moved.text().isEmpty() || fixed.text().isEmpty() || Math.abs(distance) >= 14) {
            return moved;
        }
        return new Panel.Label(moved.x(), fixed.y() + (distance >= 0 ? 14 : -14), moved.text());
    }
}
