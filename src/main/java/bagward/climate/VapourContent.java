package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.AbsoluteHumidity;
import bagward.units.Celsius;
import bagward.units.HumidityRatio;
import bagward.units.Pascal;
import bagward.units.RelativeHumidity;

/** How much water air holds, by volume and by mass, and how much more it could hold. */
public final class VapourContent {
    /** Specific gas constant of water vapour, J kg⁻¹ K⁻¹. */
    private static final double GAS_CONSTANT = 461.5;
    /** Molar mass of water over that of dry air; ASHRAE Fundamentals 2017, chapter 1 (FAO-56 rounds it to 0.622). */
    private static final double MASS_RATIO = 0.621945;

    private VapourContent() {}

    /** Mass of vapour in a volume of air: e / (Rv T), the ideal gas law with Rv = 461.5 J kg⁻¹ K⁻¹. */
    public static AbsoluteHumidity absolute(Celsius air, RelativeHumidity humidity) {
        double kilopascals = MoistAir.vapourKilopascals(air.degrees(), humidity.percent());
        return new AbsoluteHumidity(gramsPerCubicMetre(air.degrees(), kilopascals));
    }

    /** Humidity deficit: what a volume of air could still take up at its temperature. */
    public static AbsoluteHumidity deficit(Celsius air, RelativeHumidity humidity) {
        double kilopascals = MoistAir.deficitKilopascals(air.degrees(), humidity.percent());
        return new AbsoluteHumidity(gramsPerCubicMetre(air.degrees(), kilopascals));
    }

    /**
     * Mass of vapour for each mass of dry air: 0.621945 e / (p − e); ASHRAE Fundamentals 2017, chapter 1.
     *
     * @param pressure air pressure, above the vapour pressure
     * @throws ImpossibleValueException if the vapour pressure reaches the air pressure: the air would boil
     */
    public static HumidityRatio ratio(Celsius air, RelativeHumidity humidity, Pascal pressure) {
        double vapour = MoistAir.vapourPressure(air, humidity).value();
        if (vapour >= pressure.value()) {
            throw new ImpossibleValueException("humidity ratio at a vapour pressure of " + vapour
                    + " Pa is impossible: it must be below the air pressure, here " + pressure.value() + " Pa");
        }
        return new HumidityRatio(MASS_RATIO * vapour / (pressure.value() - vapour));
    }

    /** Twin for hot loops: mass of vapour of a pressure, °C and kPa to g m⁻³; checks nothing. */
    public static double gramsPerCubicMetre(double celsius, double kilopascals) {
        // kPa to Pa and kg to g: a million in all
        return kilopascals * 1e6 / (GAS_CONSTANT * (celsius + Celsius.ZERO_IN_KELVIN));
    }
}
