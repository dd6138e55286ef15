package bagward.climate;

import bagward.fault.ImpossibleValueException;

/**
 * The climate of a place (house, bay or bag) on one time grid; each part may have gaps of its own.
 *
 * @param temperature air temperature, °C
 * @param humidity relative humidity, %RH
 * @param light photosynthetic photon flux density, µmol m⁻² s⁻¹
 */
public record Climate(RegularSeries temperature, RegularSeries humidity, RegularSeries light) {
    /** Refuses parts on different grids. */
    public Climate {
        if (!temperature.grid().equals(humidity.grid()) || !temperature.grid().equals(light.grid())) {
            throw new ImpossibleValueException("the parts of a climate must lie on one time grid");
        }
    }

    /** The grid of all three. */
    public TimeGrid grid() {
        return temperature.grid();
    }

    /** Cells [first, end) of all three. */
    public Climate part(int first, int end) {
        return new Climate(temperature.part(first, end), humidity.part(first, end), light.part(first, end));
    }
}
