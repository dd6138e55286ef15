package bagward.site.plan;

import bagward.board.HouseView;
import bagward.site.chart.DayLine;
import bagward.site.view.Figures;

/**
 * The climate of a house in three figures and two small lines of its last day.
 *
 * @param temperature newest value with unit
 * @param humidity newest value with unit
 * @param light newest value with unit
 * @param temperatureLine last 24 h
 * @param humidityLine last 24 h
 */
public record HouseStrip(
        String temperature, String humidity, String light, DayLine temperatureLine, DayLine humidityLine) {
    static HouseStrip of(HouseView house, Box head) {
        double width = head.width() * 0.26;
        double height = head.height() * 0.3;
        return new HouseStrip(
                Figures.temperature(house.temperature()),
                Figures.humidity(house.humidity()),
                Figures.light(house.light()),
                DayLine.of(house.temperatureDay(), width, height),
                DayLine.of(house.humidityDay(), width, height));
    }
}
