package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Pascal;
import bagward.units.RelativeHumidity;

/**
 * Vapour pressure, dew point and vapour pressure deficit of moist air.
 *
 * <p>One formula serves both ways, so that humidity, dew point and deficit always agree with each other: the saturation
 * vapour pressure of Allen, Pereira, Raes and Smith 1998 (FAO Irrigation and Drainage Paper 56, "FAO-56"), equation 11
 * (after Tetens 1930),
 *
 * <pre>es = 0.6108 exp(17.27 t / (t + 237.3))    es in kPa, t in °C</pre>
 *
 * <p>and its closed inverse. Between 0 and 50 °C it stays within 0.14 % of Wagner and Pruss (IAPWS SR1-86), closer than
 * the WMO and the Alduchov-Eskridge Magnus forms, and the dew point within 0.02 °C for 20 to 100 %RH. Relative humidity
 * is over liquid water at every temperature, as sensors and the World Meteorological Organization report it; below
 * 0 °C the dew point is therefore not a frost point.
 *
 * <p>Each typed method has a twin on bare numbers for hot loops, with the unit in its name. The twins check nothing:
 * NaN in gives NaN out.
 *
 * <p>A deficit is not linear in temperature: take it for each reading and then the mean, never from mean values.
 */
public final class MoistAir {
    /** Saturation vapour pressure at 0 °C in equation 11, kPa. */
    private static final double AT_ZERO = 0.6108;
    /** Numerator of the exponent in equation 11, no unit. */
    private static final double SLOPE = 17.27;
    /** Offset of the denominator in equation 11, °C. */
    private static final double OFFSET = 237.3;
    /** Factor of equation 13: 17.27 times 237.3, as printed there, °C. */
    private static final double CURVE = 4098;

    private MoistAir() {}

    /** Saturation vapour pressure over liquid water; FAO-56 equation 11. */
    public static Pascal saturation(Celsius air) {
        return Pascal.ofKilopascals(saturationKilopascals(air.degrees()));
    }

    /** Slope of the saturation curve, kPa °C⁻¹; FAO-56 equation 13. */
    public static double slopeKilopascalsPerDegree(Celsius air) {
        double below = air.degrees() + OFFSET;
        return CURVE * saturationKilopascals(air.degrees()) / (below * below);
    }

    /** Vapour pressure of air; FAO-56 equation 10 solved for it. */
    public static Pascal vapourPressure(Celsius air, RelativeHumidity humidity) {
        return Pascal.ofKilopascals(vapourKilopascals(air.degrees(), humidity.percent()));
    }

    /**
     * Relative humidity of air that holds a vapour pressure; FAO-56 equation 10. Never above 100 %RH: what the air
     * cannot hold is taken as condensed.
     */
    public static RelativeHumidity relativeHumidity(Celsius air, Pascal vapour) {
        return new RelativeHumidity(relativeHumidityPercent(air.degrees(), vapour.kilopascals()));
    }

    /**
     * Temperature at which a vapour pressure saturates the air; equation 11 solved for t.
     *
     * @throws ImpossibleValueException if there is no vapour, or so little that the dew point lies below −90 °C
     */
    public static Celsius dewPoint(Pascal vapour) {
        if (vapour.value() == 0) {
            throw new ImpossibleValueException(
                    "dew point of air with no vapour (0 Pa) is impossible: give a vapour pressure above 0");
        }
        return new Celsius(dewPointDegrees(vapour.kilopascals()));
    }

    /**
     * Dew point of air, never above the air's own temperature.
     *
     * @throws ImpossibleValueException at 0 %RH, which has no dew point
     */
    public static Celsius dewPoint(Celsius air, RelativeHumidity humidity) {
        Celsius point = dewPoint(vapourPressure(air, humidity));
        return point.compareTo(air) > 0 ? air : point;
    }

    /** Vapour pressure deficit: what the air could still take up; FAO-56 equations 10 and 11. */
    public static Pascal deficit(Celsius air, RelativeHumidity humidity) {
        return Pascal.ofKilopascals(deficitKilopascals(air.degrees(), humidity.percent()));
    }

    /** Twin of {@link #saturation}: °C to kPa. */
    public static double saturationKilopascals(double celsius) {
        return AT_ZERO * Math.exp(SLOPE * celsius / (celsius + OFFSET));
    }

    /** Twin of {@link #vapourPressure}: °C and %RH to kPa. */
    public static double vapourKilopascals(double celsius, double percent) {
        return percent / 100 * saturationKilopascals(celsius);
    }

    /** Twin of {@link #relativeHumidity}: °C and kPa to %RH, at most 100. */
    public static double relativeHumidityPercent(double celsius, double kilopascals) {
        return Math.min(100, 100 * kilopascals / saturationKilopascals(celsius));
    }

    /** Twin of {@link #dewPoint(Pascal)}: kPa to °C; minus infinity stands for no vapour at all. */
    public static double dewPointDegrees(double kilopascals) {
        if (kilopascals == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double exponent = Math.log(kilopascals / AT_ZERO);
        return OFFSET * exponent / (SLOPE - exponent);
    }

    /** Twin of {@link #dewPoint(Celsius, RelativeHumidity)}: °C and %RH to °C, without the power and its logarithm. */
    public static double dewPointDegrees(double celsius, double percent) {
        if (percent == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double exponent = Math.log(percent / 100) + SLOPE * celsius / (celsius + OFFSET);
        return OFFSET * exponent / (SLOPE - exponent);
    }

    /** Air temperature minus dew point, °C and %RH to °C; 0 at saturation. */
    public static double dewPointDepressionDegrees(double celsius, double percent) {
        return celsius - dewPointDegrees(celsius, percent);
    }

    /** Twin of {@link #deficit}: °C and %RH to kPa. */
    public static double deficitKilopascals(double celsius, double percent) {
        return (1 - percent / 100) * saturationKilopascals(celsius);
    }
}
