package bagward.climate;

import bagward.units.Celsius;
import bagward.units.Pascal;
import bagward.units.RelativeHumidity;

/** Air beside a surface of another temperature: film, glass, leaf or bud. */
public final class ColdSurface {
    private ColdSurface() {}

    /** Whether water condenses on a surface: it is at or below the dew point of the air. */
    public static boolean condenses(Celsius air, RelativeHumidity humidity, Celsius surface) {
        return condenses(air.degrees(), humidity.percent(), surface.degrees());
    }

    /** Humidity of that air once it has the temperature of the surface; 100 %RH where water condenses. */
    public static RelativeHumidity humidityAt(Celsius air, RelativeHumidity humidity, Celsius surface) {
        return MoistAir.relativeHumidity(surface, MoistAir.vapourPressure(air, humidity));
    }

    /** Vapour pressure deficit between a wet surface and the air; 0 where water condenses. */
    public static Pascal deficit(Celsius air, RelativeHumidity humidity, Celsius surface) {
        double difference = MoistAir.saturation(surface).value()
                - MoistAir.vapourPressure(air, humidity).value();
        return new Pascal(Math.max(0, difference));
    }

    /** Twin of {@link #condenses(Celsius, RelativeHumidity, Celsius)}: °C, %RH, °C; NaN never condenses. */
    public static boolean condenses(double celsius, double percent, double surfaceCelsius) {
        return MoistAir.vapourKilopascals(celsius, percent) >= MoistAir.saturationKilopascals(surfaceCelsius);
    }
}
