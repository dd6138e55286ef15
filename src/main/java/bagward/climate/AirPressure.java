package bagward.climate;

import bagward.units.Checks;
import bagward.units.Pascal;

/** Air pressure from elevation, as FAO-56 takes it; within 0.15 kPa of the ICAO standard atmosphere up to 1000 m. */
public final class AirPressure {
    /** Mean pressure at sea level, 101 325 Pa. */
    public static final Pascal SEA_LEVEL = new Pascal(101_325);

    /** Psychrometric constant for each kPa of air pressure, °C⁻¹; FAO-56 equation 8. */
    private static final double PSYCHROMETRIC = 0.665e-3;

    private AirPressure() {}

    /**
     * Mean air pressure at an elevation; FAO-56 equation 7.
     *
     * @param elevation m above sea level, −430 to 6000
     */
    public static Pascal at(double elevation) {
        Checks.within("elevation", elevation, -430, 6000, "m");
        return Pascal.ofKilopascals(101.3 * Math.pow((293 - 0.0065 * elevation) / 293, 5.26));
    }

    /** Psychrometric constant at an air pressure, kPa °C⁻¹; FAO-56 equation 8. */
    public static double psychrometricConstant(Pascal air) {
        return PSYCHROMETRIC * air.kilopascals();
    }
}
