package bagward.site.chart;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.pollen.Chance;
import bagward.pollen.DayOutlook;
import bagward.pollen.HouseDay;
import bagward.pollen.OutlookPoint;
import bagward.pollen.PollenReport;
import bagward.site.view.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Draws the light of a day against the clear sky, and below it the chance of pollen through that day. */
public final class PollenDayChart {
    private static final double LEFT = 40;
    private static final double RIGHT = 64;
    private static final double TOP = 26;
    private static final double GAP = 44;
    private static final double NONE = Double.NaN;
    private static final Panel.Label NOTHING = new Panel.Label(0, 0, "");

    private final PollenReport report;
    private final DayOutlook outlook;
    private final Optional<HouseDay> day;
    private final Instant from;
    private final Instant to;
    private final double width;

    private PollenDayChart(PollenReport report, DayOutlook outlook, double width) {
        this.report = report;
        this.outlook = outlook;
        this.day = report.season().find(outlook.day());
        List<OutlookPoint> points = outlook.points();
        this.from = points.get(0).at();
        this.to = points.get(points.size() - 1).at();
        this.width = width;
    }

    /**
     * The chart of an outlook.
     *
     * @param width units; text is drawn 12 to 13 units high
     */
    public static Chart draw(PollenReport report, DayOutlook outlook, double width) {
        return new PollenDayChart(report, outlook, width).chart();
    }

    private Chart chart() {
        double height = width < 500 ? 90 : 110;
        Panel light = light(height);
        Panel chance = chance(light.frame().bottom() + GAP, height * 1.2);
        double timesY = chance.frame().bottom() + 18;
        List<Panel.Label> times =
                TimeAxis.labels(chance.frame(), report.season().zone(), timesY);
        return new Chart(width, timesY + 10, List.of(light, chance), "", times, timesY);
    }

    private Panel light(double height) {
        RegularSeries clear =
                HouseDay.clear(report.site(), outlook.day(), report.season().zone());
        RegularSeries through = scaled(clear, report.season().transmission().share());
        RegularSeries measured =
                day.map(d -> d.climate().light()).orElseGet(() -> RegularSeries.unknown(through.grid()));
        TimeGrid grid = through.grid();
        Scale scale = Scale.covering(List.of(through, measured), grid.indexOf(from), grid.indexOf(to), 100);
        Frame frame = frame(TOP, height, scale.low(), scale.high());
        Trace trace = new Trace(frame, grid);
        return new Panel(
                "Light in the house, µmol m⁻² s⁻¹",
                frame,
                labels(frame, scale),
                trace.line(through, i -> true),
                trace.line(measured, i -> grid.at(i).isBefore(report.now())),
                "",
                "",
                NONE,
                "",
                "",
                NOTHING,
                NOTHING);
    }

    private Panel chance(double top, double height) {
        Frame frame = frame(top, height, 0, 100);
        RegularSeries darker = series(p -> percent(p.ifSo()), p -> true);
        RegularSeries low = series(p -> 100 * p.ifSo().interval().low(), p -> true);
        RegularSeries high = series(p -> 100 * p.ifSo().interval().high(), p -> true);
        RegularSeries clear = series(p -> percent(p.ifClear()), p -> !p.over());
        Trace trace = new Trace(frame, darker.grid());
        return new Panel(
                "Chance of clear or plentiful pollen, %",
                frame,
                labels(frame, new Scale(0, 100, 25)),
                trace.line(clear, i -> true),
                trace.line(darker, i -> over(darker.grid(), i)),
                trace.line(darker, i -> !over(darker.grid(), i + 1)),
                trace.band(low, high, i -> true),
                NONE,
                "",
                "",
                end(frame, outlook.points().get(outlook.points().size() - 1).ifClear(), clear, "if clear"),
                NOTHING);
    }

    private boolean over(TimeGrid grid, int cell) {
        return cell >= 0 && !grid.at(cell).plus(grid.step().dividedBy(2)).isAfter(report.now());
    }

    private Panel.Label end(Frame frame, Chance last, RegularSeries shown, String text) {
        boolean any = shown.grid().size() > 0 && shown.known(shown.grid().size() - 1);
        return any ? new Panel.Label(frame.right() + 6, frame.y(percent(last)) + 4, text) : NOTHING;
    }

    private static double percent(Chance chance) {
        return 100 * chance.probability();
    }

    /** Points in the middle of cells, so that a trace draws them at their times; the last one may lie closer. */
    private RegularSeries series(ToDoubleFunction<OutlookPoint> value, Predicate<OutlookPoint> shown) {
        List<OutlookPoint> points = outlook.points();
        Duration step = Duration.between(points.get(0).at(), points.get(1).at());
        List<Double> values = new ArrayList<>();
        for (OutlookPoint point : points.subList(0, points.size() - 1)) {
            values.add(shown.test(point) ? value.applyAsDouble(point) : NONE);
        }
        TimeGrid grid = new TimeGrid(from.minus(step.dividedBy(2)), step, values.size());
        return RegularSeries.of(grid, values.stream().mapToDouble(v -> v).toArray());
    }

    private static RegularSeries scaled(RegularSeries series, double factor) {
        double[] values = series.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] *= factor;
        }
        return RegularSeries.of(series.grid(), values);
    }

    private Frame frame(double top, double height, double low, double high) {
        return new Frame(LEFT, top, width - LEFT - RIGHT, height, from, to, low, high);
    }

    private static List<Panel.Label> labels(Frame frame, Scale scale) {
        return scale.labels().stream()
                .map(v -> new Panel.Label(LEFT - 6, frame.y(v), Words.whole(v)))
                .toList();
    }
}
