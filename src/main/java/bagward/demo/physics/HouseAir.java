package bagward.demo.physics;

/**
 * The air at one place in a house at one moment.
 *
 * @param celsius air temperature, °C
 * @param vapourDensity kg m⁻³
 * @param glassCelsius temperature of the cover above, °C
 * @param globalLight solar radiation that reaches the place, W m⁻²
 * @param airSpeed m s⁻¹
 */
public record HouseAir(double celsius, double vapourDensity, double glassCelsius, double globalLight, double airSpeed) {

    /** Relative humidity, %RH; may be a little above 100 in fog. */
    public double percent() {
        return Vapour.percent(vapourDensity, celsius);
    }

    /** The air of a corner that is warmer or colder, and moister or drier, than the middle of the house. */
    public HouseAir corner(double warmerKelvin, double vapourFactor) {
        return new HouseAir(celsius + warmerKelvin, vapourDensity * vapourFactor, glassCelsius, globalLight, airSpeed);
    }
}
