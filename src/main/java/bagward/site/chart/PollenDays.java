package bagward.site.chart;

import bagward.climate.Sky;
import bagward.pollen.PollenDay;
import bagward.pollen.PollenReport;
import bagward.pollen.ScoreRow;
import bagward.site.view.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Days as bars of light with the scores of each above its bar.
 *
 * @param width units
 * @param height units
 * @param left where the bars begin
 * @param right where they end
 * @param bars one for each day with any light
 * @param dots scores; one for all equal scores of a day
 * @param hot days whose morning may be spoilt by the heat of the day before
 * @param values labelled light sums at the left
 * @param levels labelled scores at the left
 * @param days labelled days below
 */
public record PollenDays(
        double width,
        double height,
        double left,
        double right,
        List<Bar> bars,
        List<Dot> dots,
        List<Panel.Label> hot,
        List<Panel.Label> values,
        List<Panel.Label> levels,
        List<Panel.Label> days) {
    private static final double LEFT = 40;
    private static final double TOP = 20;
    private static final double LEVEL = 18;
    private static final double BARS_TOP = TOP + 4 * LEVEL + 22;
    private static final double BARS_HEIGHT = 110;
    private static final double BOTTOM = BARS_TOP + BARS_HEIGHT;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    /** Copies the lists. */
    public PollenDays {
        bars = List.copyOf(bars);
        dots = List.copyOf(dots);
        hot = List.copyOf(hot);
        values = List.copyOf(values);
        levels = List.copyOf(levels);
        days = List.copyOf(days);
    }

    /**
     * A bar.
     *
     * @param x left edge
     * @param y upper edge
     * @param width units
     * @param height units
     * @param kind sunny, mixed, cloudy, or open if light is missing and the sum is at least this
     */
    public record Bar(double x, double y, double width, double height, String kind) {}

    /**
     * Equal scores of a day.
     *
     * @param x middle
     * @param y middle
     * @param radius units, larger for more scores
     */
    public record Dot(double x, double y, double radius) {}

    /** The newest days of a report. */
    public static PollenDays draw(PollenReport report, int most, double width) {
        List<PollenDay> all = report.days();
        List<PollenDay> shown = all.subList(Math.max(0, all.size() - most), all.size());
        double step = (width - LEFT - 8) / Math.max(1, shown.size());
        double highest =
                shown.stream().mapToDouble(d -> d.light().moles()).max().orElse(1);
        double top = Math.max(2, Math.ceil(highest / 5) * 5);
        List<Bar> bars = new ArrayList<>();
        List<Dot> dots = new ArrayList<>();
        List<Panel.Label> hot = new ArrayList<>();
        List<Panel.Label> days = new ArrayList<>();
        int each = (int) Math.ceil(52 / step);
        for (int i = 0; i < shown.size(); i++) {
            PollenDay day = shown.get(i);
            double x = LEFT + i * step;
            bar(day, x, step, top).ifPresent(bars::add);
            dots.addAll(dots(report, day.day(), x + step / 2));
            if (i > 0 && shown.get(i - 1).spoilsNextMorning()) {
                hot.add(new Panel.Label(x + step / 2, BARS_TOP - 8, "hot"));
            }
            if ((shown.size() - 1 - i) % each == 0) {
                days.add(new Panel.Label(x + step / 2, BOTTOM + 16, DAY.format(day.day())));
            }
        }
        return new PollenDays(width, BOTTOM + 26, LEFT, width - 8, bars, dots, hot, values(top), levelLabels(), days);
    }

    private static java.util.Optional<Bar> bar(PollenDay day, double x, double step, double top) {
        if (day.light().daylight().known().isZero()) {
            return java.util.Optional.empty();
        }
        double height = BARS_HEIGHT * day.light().moles() / top;
        String kind = day.light().complete() ? day.sky().map(PollenDays::kind).orElse("mixed") : "open";
        return java.util.Optional.of(new Bar(x + step * 0.12, BOTTOM - height, step * 0.76, height, kind));
    }

    private static String kind(Sky sky) {
        return sky.name().toLowerCase(Locale.ROOT);
    }

    private static List<Dot> dots(PollenReport report, LocalDate day, double x) {
        Map<Integer, Long> counts = report.rows().stream()
                .filter(row -> row.day().equals(day))
                .map(ScoreRow::score)
                .collect(Collectors.groupingBy(s -> s.number(), TreeMap::new, Collectors.counting()));
        List<Dot> dots = new ArrayList<>();
        counts.forEach((score, count) -> dots.add(new Dot(x, level(score), Math.min(8, 3.5 + Math.sqrt(count) - 1))));
        return dots;
    }

    private static double level(int score) {
        return TOP + (3 - score) * LEVEL + LEVEL / 2;
    }

    private static List<Panel.Label> values(double top) {
        return List.of(
                new Panel.Label(LEFT - 6, BARS_TOP, Words.whole(top)),
                new Panel.Label(LEFT - 6, BARS_TOP + BARS_HEIGHT / 2, Words.oneDecimal(top / 2)),
                new Panel.Label(LEFT - 6, BOTTOM, "0"));
    }

    private static List<Panel.Label> levelLabels() {
        List<Panel.Label> levels = new ArrayList<>();
        for (int score = 0; score <= 3; score++) {
            levels.add(new Panel.Label(LEFT - 6, level(score), Integer.toString(score)));
        }
        return levels;
    }
}
