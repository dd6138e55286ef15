package bagward.climate;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.units.Celsius;
import bagward.units.Illuminance;
import bagward.units.Irradiance;
import bagward.units.Pascal;
import bagward.units.PhotonFlux;
import bagward.units.RelativeHumidity;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published value under src/test/resources/climate, with the tolerance and source that stand beside it. */
class PublishedTablesTest {
    private static final Map<String, ToDoubleFunction<PublishedCheck>> AIR = Map.ofEntries(
            entry("saturation", c -> MoistAir.saturation(celsius(c, "t")).kilopascals()),
            entry("mean saturation", c -> meanSaturation(c)),
            entry("slope", c -> MoistAir.slopeKilopascalsPerDegree(celsius(c, "t"))),
            entry(
                    "vapour pressure",
                    c -> MoistAir.vapourPressure(celsius(c, "t"), humidity(c, "rh"))
                            .kilopascals()),
            entry("vapour pressure of extremes", c -> vapourOfExtremes(c)),
            entry("deficit of extremes", c -> meanSaturation(c) - vapourOfExtremes(c)),
            entry(
                    "deficit",
                    c -> MoistAir.deficit(celsius(c, "t"), humidity(c, "rh")).kilopascals()),
            entry(
                    "dew point",
                    c -> MoistAir.dewPoint(celsius(c, "t"), humidity(c, "rh")).degrees()),
            entry("dew-point depression", c -> MoistAir.dewPointDepressionDegrees(c.input("t"), c.input("rh"))),
            entry(
                    "dew point of pressure",
                    c -> MoistAir.dewPoint(Pascal.ofKilopascals(c.input("e"))).degrees()),
            entry("humidity of pressures", c -> humidityOfPressures(c)),
            entry(
                    "absolute humidity",
                    c -> VapourContent.absolute(celsius(c, "t"), humidity(c, "rh"))
                            .gramsPerCubicMetre()),
            entry(
                    "humidity ratio",
                    c -> VapourContent.ratio(celsius(c, "t"), humidity(c, "rh"), new Pascal(c.input("p")))
                            .kilogramsPerKilogram()),
            entry(
                    "wet bulb",
                    c -> Psychrometer.WMO
                            .wetBulb(celsius(c, "t"), humidity(c, "rh"), new Pascal(c.input("p")))
                            .degrees()),
            entry("psychrometer humidity", c -> psychrometerHumidity(c)),
            entry(
                    "aspirated vapour pressure",
                    c -> Psychrometer.ASPIRATED
                            .vapourPressure(celsius(c, "dry"), celsius(c, "wet"), AirPressure.at(c.input("z")))
                            .kilopascals()),
            entry("air pressure", c -> AirPressure.at(c.input("z")).kilopascals()),
            entry("psychrometric constant", c -> AirPressure.psychrometricConstant(AirPressure.at(c.input("z")))));

    private static final Map<String, ToDoubleFunction<PublishedCheck>> LIGHT = Map.of(
            "photon flux of lux",
                    c -> Light.photonFlux(
                                    new Illuminance(c.input("lux")), source(c).factor())
                            .micromoles(),
            "lux of photon flux",
                    c -> Light.illuminance(photons(c), source(c).factor()).lux(),
            "lux for each W of PAR",
                    c -> Light.illuminance(photons(c), source(c).factor()).lux()
                            / Light.photosyntheticPower(photons(c), source(c)).wattsPerSquareMetre(),
            "photon flux of global",
                    c -> Light.photonFlux(new Irradiance(c.input("rs"))).micromoles(),
            "global of lux",
                    c -> Light.globalRadiation(new Illuminance(c.input("lux"))).wattsPerSquareMetre());

    private static final Map<String, ToDoubleFunction<PublishedCheck>> RADIATION = Map.ofEntries(
            entry("inverse distance", c -> day(c).inverseRelativeDistance()),
            entry("declination", c -> day(c).declination()),
            entry("sunset angle", c -> day(c).sunsetHourAngle()),
            entry("extraterrestrial", c -> day(c).extraterrestrialMegajoules()),
            entry("daylight", c -> day(c).daylightHours()),
            entry("of sunshine", c -> day(c).sunshineMegajoules(c.input("n"))),
            entry("clear sky", c -> day(c).clearSkyMegajoules(c.input("z"))),
            entry("hour angle", c -> hour(c).hourAngle(c.input("clock"))),
            entry("seasonal correction", c -> hour(c).seasonalCorrectionHours()),
            entry("hourly extraterrestrial", c -> hour(c).extraterrestrialMegajoules(c.input("clock"), 1)),
            entry("hourly clear sky", c -> hour(c).clearSkyMegajoules(c.input("clock"), 1, c.input("z"))),
            entry("haurwitz", c -> ClearSky.globalWattsPerSquareMetre(new SunPosition(0, c.input("zenith")).cosine())));

    private static final Map<String, ToDoubleFunction<PublishedCheck>> SENSORS = Map.of(
            "salt humidity",
                    c -> SaturatedSalt.valueOf(c.word("salt"))
                            .humidity(celsius(c, "t"))
                            .percent(),
            "calm score", c -> WindTree.calmScore(c.input("t"), c.input("rh"), c.input("wind"), c.input("dpd")),
            "windy score", c -> WindTree.windyScore(c.input("t"), c.input("rh"), c.input("wind"), c.input("dpd")),
            "wet", c -> WindTree.wet(c.input("t"), c.input("rh"), c.input("wind")) ? 1 : 0);

    @ParameterizedTest
    @MethodSource
    void moist_air_agrees_with_the_outside(PublishedCheck check) {
        assertAgrees(check, AIR);
    }

    static Stream<PublishedCheck> moist_air_agrees_with_the_outside() {
        return Stream.of("saturation.csv", "worked-examples.csv", "moist-air.csv")
                .flatMap(PublishedCheck::of);
    }

    @ParameterizedTest
    @MethodSource
    void light_agrees_with_the_outside(PublishedCheck check) {
        assertAgrees(check, LIGHT);
    }

    static Stream<PublishedCheck> light_agrees_with_the_outside() {
        return PublishedCheck.of("light.csv");
    }

    @ParameterizedTest
    @MethodSource
    void radiation_agrees_with_the_outside(PublishedCheck check) {
        assertAgrees(check, RADIATION);
    }

    static Stream<PublishedCheck> radiation_agrees_with_the_outside() {
        return PublishedCheck.of("radiation.csv");
    }

    @ParameterizedTest
    @MethodSource
    void salts_and_the_wind_tree_agree_with_the_outside(PublishedCheck check) {
        assertAgrees(check, SENSORS);
    }

    static Stream<PublishedCheck> salts_and_the_wind_tree_agree_with_the_outside() {
        return Stream.of("salts.csv", "wind-tree.csv").flatMap(PublishedCheck::of);
    }

    private static void assertAgrees(PublishedCheck check, Map<String, ToDoubleFunction<PublishedCheck>> functions) {
        ToDoubleFunction<PublishedCheck> function =
                Objects.requireNonNull(functions.get(check.quantity()), () -> "no function for " + check);
        assertEquals(check.value(), function.applyAsDouble(check), check.tolerance(), check.toString());
    }

    private static Celsius celsius(PublishedCheck check, String name) {
        return new Celsius(check.input(name));
    }

    private static RelativeHumidity humidity(PublishedCheck check, String name) {
        return new RelativeHumidity(check.input(name));
    }

    private static double meanSaturation(PublishedCheck c) {
        double high = MoistAir.saturation(celsius(c, "high")).kilopascals();
        return (high + MoistAir.saturation(celsius(c, "low")).kilopascals()) / 2;
    }

    private static double vapourOfExtremes(PublishedCheck c) {
        Pascal atNight = MoistAir.vapourPressure(celsius(c, "low"), humidity(c, "highrh"));
        Pascal atNoon = MoistAir.vapourPressure(celsius(c, "high"), humidity(c, "lowrh"));
        return (atNight.kilopascals() + atNoon.kilopascals()) / 2;
    }

    private static double humidityOfPressures(PublishedCheck c) {
        Celsius air = MoistAir.dewPoint(Pascal.ofKilopascals(c.input("es")));
        return MoistAir.relativeHumidity(air, Pascal.ofKilopascals(c.input("e")))
                .percent();
    }

    private static double psychrometerHumidity(PublishedCheck c) {
        Pascal vapour = Psychrometer.WMO.vapourPressure(celsius(c, "dry"), celsius(c, "wet"), new Pascal(c.input("p")));
        return MoistAir.relativeHumidity(celsius(c, "dry"), vapour).percent();
    }

    private static LightSource source(PublishedCheck check) {
        return LightSource.valueOf(check.word("source"));
    }

    private static PhotonFlux photons(PublishedCheck check) {
        return new PhotonFlux(check.input("ppfd"));
    }

    private static DailyRadiation day(PublishedCheck check) {
        return new DailyRadiation(check.input("lat"), (int) check.input("j"));
    }

    private static HourlyRadiation hour(PublishedCheck check) {
        return new HourlyRadiation(day(check), check.input("lon"), check.input("zone"));
    }
}
