package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Pascal;
import bagward.units.RelativeHumidity;

/**
 * Dry and wet bulb: e = es(wet) − A p (dry − wet), where A says how the wet bulb is ventilated.
 *
 * <p>WMO-No. 8 (annex 4.B) gives A for the aspirated psychrometer over water; FAO-56 equations 15 and 16 give three
 * constants. Only 0.000662 was read in a text that quotes FAO-56; 0.0008, 0.0012 and the WMO coefficients are from memory.
 */
public enum Psychrometer {
    /** Aspirated, after the World Meteorological Organization: A = 6.53e-4 (1 + 0.000944 wet). */
    WMO(6.53e-4, 0.000944),
    /** Aspirated at about 5 m s⁻¹, after FAO-56. */
    ASPIRATED(0.000662, 0),
    /** Naturally ventilated at about 1 m s⁻¹, after FAO-56. */
    NATURAL(0.000800, 0),
    /** Indoors without ventilation, after FAO-56. */
    UNVENTILATED(0.001200, 0);

    /** Halvings from at most 190 °C to far below a thousandth of a degree. */
    private static final int HALVINGS = 40;

    private final double coefficient;
    private final double growth;

    Psychrometer(double coefficient, double growth) {
        this.coefficient = coefficient;
        this.growth = growth;
    }

    /**
     * Vapour pressure from dry and wet bulb.
     *
     * @param pressure air pressure
     * @throws ImpossibleValueException if the wet bulb is the warmer one, or so cold that no vapour would be left
     */
    public Pascal vapourPressure(Celsius dry, Celsius wet, Pascal pressure) {
        if (wet.compareTo(dry) > 0) {
            throw new ImpossibleValueException("a wet bulb of " + wet.degrees() + " °C above a dry one of "
                    + dry.degrees() + " °C is impossible: were they swapped?");
        }
        return Pascal.ofKilopascals(vapourKilopascals(dry.degrees(), wet.degrees(), pressure.kilopascals()));
    }

    /** Wet-bulb temperature of air: between dew point and air temperature, found by halving to far below 0.001 °C. */
    public Celsius wetBulb(Celsius air, RelativeHumidity humidity, Pascal pressure) {
        double vapour = MoistAir.vapourKilopascals(air.degrees(), humidity.percent());
        double high = air.degrees();
        double low = Math.max(-90, Math.min(high, MoistAir.dewPointDegrees(air.degrees(), humidity.percent())));
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (vapourKilopascals(air.degrees(), middle, pressure.kilopascals()) < vapour) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Celsius(high);
    }

    private double vapourKilopascals(double dry, double wet, double pressure) {
        double factor = coefficient * (1 + growth * wet);
        return MoistAir.saturationKilopascals(wet) - factor * pressure * (dry - wet);
    }
}
