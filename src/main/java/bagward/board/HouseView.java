package bagward.board;

import bagward.station.House;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A house on the board.
 *
 * @param house the house and its bays
 * @param temperature newest house temperature, °C
 * @param humidity newest house humidity, %RH
 * @param light newest light, µmol m⁻² s⁻¹
 * @param newestReading when its newest reading was measured
 * @param temperatureDay the last 24 h in equal steps, oldest first, NaN for gaps, °C
 * @param humidityDay the same for humidity, %RH
 */
public record HouseView(
        House house,
        Optional<Measure> temperature,
        Optional<Measure> humidity,
        Optional<Measure> light,
        Optional<Instant> newestReading,
        List<Double> temperatureDay,
        List<Double> humidityDay) {
    /** Copies the lists. */
    public HouseView {
        temperatureDay = List.copyOf(temperatureDay);
        humidityDay = List.copyOf(humidityDay);
    }
}
