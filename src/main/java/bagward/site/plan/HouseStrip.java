package bagward.site.plan;

import bagward.board.HouseView;
import bagward.site.chart.DayLine;
import bagward.site.view.Figures;
import java.util.List;

/**
 * The climate of a house in a strip above it: figures, and small lines of the last day.
 *
 * @param textSize size of the figures, units
 * @param baseY base line of the figures, from the top of the strip
 * @param lineY top of the lines, from the top of the strip
 * @param figures from left to right
 */
public record HouseStrip(double textSize, double baseY, double lineY, List<Figure> figures) {
    /** Width of the longest figure for each unit of its size. */
    private static final double TEXT_WIDTH = 4.3;

    /** Copies the list. */
    public HouseStrip {
        figures = List.copyOf(figures);
    }

    /**
     * A figure of the strip.
     *
     * @param x left end, units
     * @param text value with unit
     * @param lineX left end of its line
     * @param line the last day; empty path where there is none
     */
    public record Figure(double x, String text, double lineX, DayLine line) {}

    static HouseStrip of(HouseView house, Box head) {
        double size = head.height() * 0.235;
        double column = head.width() / 3;
        double lineWidth = Math.max(16, Math.min(column - size * (TEXT_WIDTH + 0.6), size * 5));
        DayLine temperature = DayLine.of(house.temperatureDay(), lineWidth, size);
        DayLine humidity = DayLine.of(house.humidityDay(), lineWidth, size);
        double lineX = size * TEXT_WIDTH;
        return new HouseStrip(
                size,
                head.height() * 0.84,
                head.height() * 0.84 - size * 0.9,
                List.of(
                        new Figure(2, Figures.temperature(house.temperature()), 2 + lineX, temperature),
                        new Figure(column, Figures.humidity(house.humidity()), column + lineX, humidity),
                        new Figure(
                                column * 2,
                                Figures.light(house.light()),
                                column * 2 + lineX,
                                DayLine.of(List.of(), 1, 1))));
    }
}
