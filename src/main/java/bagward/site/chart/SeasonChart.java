package bagward.site.chart;

import bagward.climate.RegularSeries;
import bagward.site.view.Words;
import bagward.watch.HouseDays;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws a house day by day: the mean of each day as a line, from its lowest to its highest value as a band. */
public final class SeasonChart {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final DateTimeFormatter JANUARY = DateTimeFormatter.ofPattern("yyyy", Locale.ENGLISH);

    private static final double LEFT = 44;
    private static final double RIGHT = 12;
    private static final double GAP = 40;
    private static final double TOP = 26;

    /** Room that a label of the time axis takes, units. */
    private static final double ROOM = 56;

    private final HouseDays days;
    private final double width;

    private SeasonChart(HouseDays days, double width) {
        this.days = days;
        this.width = width;
    }

    /**
     * The chart of a house; a panel for each quantity of which anything is known.
     *
     * @param width units; text is drawn 12 to 13 units high
     */
    public static Chart draw(HouseDays days, double width) {
        return new SeasonChart(days, width).chart();
    }

    private Chart chart() {
        List<Panel> panels = new ArrayList<>();
        double top = TOP;
        if (days.temperature().known()) {
            panels.add(panel("Temperature, °C", top, days.temperature(), 8));
            top = panels.get(panels.size() - 1).frame().bottom() + GAP;
        }
        if (days.humidity().known()) {
            panels.add(panel("Relative humidity, %", top, days.humidity(), 40));
            top = panels.get(panels.size() - 1).frame().bottom() + GAP;
        }
        if (days.light().known()) {
            panels.add(panel("Light, µmol m⁻² s⁻¹", top, days.light(), 100));
            top = panels.get(panels.size() - 1).frame().bottom() + GAP;
        }
        double timesY = top - GAP + 18;
        List<Panel.Label> times =
                panels.isEmpty() ? List.of() : times(panels.get(0).frame(), timesY);
        return new Chart(width, timesY + 10, panels, "", times, timesY);
    }

    private Panel panel(String title, double top, HouseDays.Range range, double smallestSpan) {
        Scale scale = Scale.covering(List.of(range.minimum(), range.maximum()), 0, days.size(), smallestSpan);
        RegularSeries mean = range.mean();
        Frame frame = new Frame(
                LEFT,
                top,
                width - LEFT - RIGHT,
                width < 500 ? 110 : 140,
                mean.grid().start(),
                mean.grid().end(),
                scale.low(),
                scale.high());
        Trace trace = new Trace(frame, mean.grid());
        List<Panel.Label> values = new ArrayList<>();
        scale.labels().forEach(v -> values.add(new Panel.Label(LEFT - 6, frame.y(v), Words.whole(v))));
        Panel.Label none = new Panel.Label(0, 0, "");
        return new Panel(
                title,
                frame,
                values,
                trace.line(mean, i -> true),
                "",
                "",
                trace.band(range.minimum(), range.maximum(), i -> true),
                Double.NaN,
                "",
                "",
                none,
                none);
    }

    private List<Panel.Label> times(Frame frame, double y) {
        double most = Math.max(1, frame.width() / ROOM);
        List<Panel.Label> labels = new ArrayList<>();
        if (days.size() <= 60) {
            int step = (int) Math.ceil(days.size() / most);
            for (int i = 0; i < days.size(); i += step) {
                labels.add(label(frame, days.day(i), y, DAY));
            }
            return labels;
        }
        int months = (int) Math.max(1, Math.ceil(days.size() / 30.4 / most));
        LocalDate month = days.from().plusMonths(1).withDayOfMonth(1);
        for (; month.isBefore(days.day(days.size())); month = month.plusMonths(1)) {
            if ((month.getMonthValue() - 1) % months == 0) {
                labels.add(label(frame, month, y, month.getMonthValue() == 1 ? JANUARY : MONTH));
            }
        }
        return labels;
    }

    private static Panel.Label label(Frame frame, LocalDate day, double y, DateTimeFormatter form) {
        double x = frame.x(day.atStartOfDay(ZoneOffset.UTC).toInstant());
        return new Panel.Label(x, y, form.format(day));
    }
}
