package bagward.site.chart;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.MoistureCourse;
import bagward.site.view.Words;
import bagward.watch.PlaceStay;
import java.time.ZoneId;
import java.util.List;

/** Draws what a drying place was like: air as measured, and the moisture that seed would come to, estimated. */
public final class DryingChart {
    private static final double LEFT = 40;
    private static final double RIGHT = 54;
    private static final double GAP = 40;
    private static final double TOP = 26;
    private static final Panel.Label NOTHING = new Panel.Label(0, 0, "");

    private final PlaceStay stay;
    private final ZoneId zone;
    private final double width;

    private DryingChart(PlaceStay stay, ZoneId zone, double width) {
        this.stay = stay;
        this.zone = zone;
        this.width = width;
    }

    /**
     * The chart of a stay.
     *
     * @param stay the air, and what it did to seed
     * @param zone zone of the time axis
     * @param width units; text is drawn 12 to 13 units high
     */
    public static Chart draw(PlaceStay stay, ZoneId zone, double width) {
        return new DryingChart(stay, zone, width).chart();
    }

    private Chart chart() {
        double fungiFrom = stay.storage().fungi().get(0).fromPercent();
        double storedAt = stay.storage().stored().highest().percent();
        double height = width < 500 ? 100 : 120;
        RegularSeries warm = stay.air().temperature();
        RegularSeries damp = stay.air().humidity();
        MoistureCourse course = stay.seed().course();
        List<RegularSeries> moistures = List.of(course.atLeast(), course.atMost());
        Panel temperature = measured("Temperature, °C", TOP, height, scale(List.of(warm), 8), warm, Double.NaN, "");
        Panel humidity = measured(
                "Relative humidity, %",
                temperature.frame().bottom() + GAP,
                height,
                scale(List.of(damp), 40),
                damp,
                fungiFrom,
                "fungi from " + Words.whole(fungiFrom));
        Panel moisture = moisture(humidity.frame().bottom() + GAP, height, scale(moistures, 8), course, storedAt);
        double timesY = moisture.frame().bottom() + 18;
        return new Chart(
                width,
                timesY + 10,
                List.of(temperature, humidity, moisture),
                "",
                TimeAxis.labels(moisture.frame(), zone, timesY),
                timesY);
    }

    private Panel measured(
            String title, double top, double height, Scale scale, RegularSeries line, double limit, String text) {
        Frame frame = frame(top, height, scale);
        return new Panel(
                title,
                frame,
                BagChart.values(frame, scale),
                "",
                new Trace(frame, line.grid()).line(line, i -> true),
                "",
                "",
                Double.isNaN(limit) ? Double.NaN : frame.y(limit),
                text,
                "",
                NOTHING,
                BagChart.end(frame, line, "air"));
    }

    private Panel moisture(double top, double height, Scale scale, MoistureCourse course, double storedAt) {
        Frame frame = frame(top, height, scale);
        Trace trace = new Trace(frame, course.middle().grid());
        return new Panel(
                "Seed comes to, % of its moist mass",
                frame,
                BagChart.values(frame, scale),
                "",
                "",
                trace.line(course.middle(), i -> true),
                trace.band(open(course.atLeast(), course, 0), open(course.atMost(), course, scale.high()), i -> true),
                frame.y(storedAt),
                "stored at " + Words.whole(storedAt) + " or less",
                "",
                NOTHING,
                BagChart.end(frame, course.middle(), "seed"));
    }

    /** A bound that goes to the edge of the paper where only the other one is known. */
    private static RegularSeries open(RegularSeries bound, MoistureCourse course, double edge) {
        double[] values = bound.toArray();
        for (int i = 0; i < values.length; i++) {
            boolean other = course.atLeast().known(i) || course.atMost().known(i);
            values[i] = !bound.known(i) && other ? edge : values[i];
        }
        return RegularSeries.of(bound.grid(), values);
    }

    private Scale scale(List<RegularSeries> series, double smallestSpan) {
        TimeGrid grid = stay.air().grid();
        return Scale.covering(series, 0, grid.size(), smallestSpan);
    }

    private Frame frame(double top, double height, Scale scale) {
        return new Frame(
                LEFT,
                top,
                width - LEFT - RIGHT,
                height,
                stay.span().from(),
                stay.span().to(),
                scale.low(),
                scale.high());
    }
}
