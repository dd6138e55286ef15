package bagward.site.chart;

import bagward.bag.Banded;
import java.time.ZoneId;
import java.util.BitSet;
import java.util.List;

/** Draws an outlook until the next morning: all of it estimated, so dashed, with its band. */
public final class NightChart {
    private static final double LEFT = 40;
    private static final double RIGHT = 54;
    private static final double TOP = 26;
    private static final double GAP = 40;
    private static final Panel.Label NOTHING = new Panel.Label(0, 0, "");

    private final NightLines night;
    private final double width;

    private NightChart(NightLines night, double width) {
        this.night = night;
        this.width = width;
    }

    /**
     * The chart of an outlook.
     *
     * @param night what to draw
     * @param zone zone of the time axis
     * @param dampLimit limit line of the humidity, %RH
     * @param width units; text is drawn 12 to 13 units high
     */
    public static Chart draw(NightLines night, ZoneId zone, double dampLimit, double width) {
        return new NightChart(night, width).chart(zone, dampLimit);
    }

    private Chart chart(ZoneId zone, double dampLimit) {
        double height = width < 500 ? 100 : 120;
        Banded warm = night.temperature();
        Banded damp = night.humidity();
        int hours = warm.middle().grid().size();
        Scale degrees = Scale.covering(List.of(warm.low(), warm.high()), 0, hours, 8);
        Scale percents = Scale.ofHumidity(Scale.covering(List.of(damp.low(), damp.high()), 0, hours, 40));
        Panel temperature = panel("Temperature, °C", TOP, height, degrees, warm, Double.NaN, "");
        Panel humidity = panel(
                "Relative humidity, %",
                temperature.frame().bottom() + GAP, height, percents, damp, dampLimit, Scale.dampText(dampLimit));
        double timesY = humidity.frame().bottom() + 18;
        String dark = new Trace(humidity.frame(), night.light().grid())
                .strips(
                        i -> BagChart.dark(night.light(), i),
                        temperature.frame().top(),
                        humidity.frame().bottom());
        return new Chart(
                width,
                timesY + 10,
                List.of(temperature, humidity),
                dark,
                TimeAxis.labels(humidity.frame(), zone, timesY),
                timesY);
    }

    private Panel panel(
            String title, double top, double height, Scale scale, Banded line, double limit, String limitText) {
        Frame frame =
                new Frame(LEFT, top, width - LEFT - RIGHT, height, night.from(), night.to(), scale.low(), scale.high());
        Trace trace = new Trace(frame, line.middle().grid());
        BitSet film = night.film();
        boolean limited = !Double.isNaN(limit);
        return new Panel(
                title,
                frame,
                BagChart.values(frame, scale),
                "",
                "",
                trace.line(line.middle(), i -> true),
                trace.band(line.low(), line.high(), i -> true),
                limited ? frame.y(limit) : Double.NaN,
                limitText,
                limited ? trace.strips(film::get, frame.bottom() - 5, frame.bottom()) : "",
                NOTHING,
                BagChart.end(frame, line.middle(), night.name()));
    }
}
