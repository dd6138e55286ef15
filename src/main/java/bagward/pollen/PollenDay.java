package bagward.pollen;

import bagward.climate.LightSum;
import bagward.climate.Sky;
import bagward.mould.HeatBand;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What of a day bears on pollen.
 *
 * @param day the civil day
 * @param light light sum from sunrise to sunset, mol m⁻²
 * @param clearSkyIndex light over that of a cloudless sky through the same glass, usually 0 to about 1
 * @param sky sunny, mixed or cloudy
 * @param morningHumidity mean of 06 to 10 h local time, %RH
 * @param morningDeficit mean vapour pressure deficit of the same hours, kPa
 * @param highestTemperature highest five minutes of the day, °C
 * @param heat what its heat means for pollen
 */
public record PollenDay(
        LocalDate day,
        LightSum light,
        OptionalDouble clearSkyIndex,
        Optional<Sky> sky,
        OptionalDouble morningHumidity,
        OptionalDouble morningDeficit,
        OptionalDouble highestTemperature,
        HeatBand heat) {
    /** Whether it was so hot that the pollen of the next morning may be spoilt. */
    public boolean spoilsNextMorning() {
        return heat.compareTo(HeatBand.HEAT) >= 0;
    }
}
