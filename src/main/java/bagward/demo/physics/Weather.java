package bagward.demo.physics;

/**
 * The weather outside at one moment.
 *
 * @param celsius air temperature, °C
 * @param vapourDensity kg m⁻³
 * @param globalLight solar radiation on the level, W m⁻²
 * @param skyCelsius temperature at which the sky radiates, °C
 * @param wind m s⁻¹
 */
public record Weather(double celsius, double vapourDensity, double globalLight, double skyCelsius, double wind) {}
