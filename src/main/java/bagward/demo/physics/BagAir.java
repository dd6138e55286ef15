package bagward.demo.physics;

/**
 * The inside of a bag at one moment.
 *
 * @param celsius air temperature, °C
 * @param vapourDensity kg m⁻³
 * @param filmCelsius temperature of the film, °C
 * @param headCelsius temperature of the head, °C
 * @param waterOnFilm liquid water on the film, kg
 */
public record BagAir(double celsius, double vapourDensity, double filmCelsius, double headCelsius, double waterOnFilm) {

    /** Relative humidity, %RH; may be a little above 100 while water condenses. */
    public double percent() {
        return Vapour.percent(vapourDensity, celsius);
    }
}
