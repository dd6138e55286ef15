package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/**
 * Values of this program itself, frozen after the checks against the outside had passed. They prove nothing; they call a
 * person when a change moves a digit.
 */
class UnchangedTest {
    private static final double TIGHT = 1e-9;
    private static final Celsius AIR = new Celsius(18.5);
    private static final RelativeHumidity HUMIDITY = new RelativeHumidity(83);

    @Test
    void moist_air_is_as_it_was() {
        assertEquals(2.1297773032821605, MoistAir.saturationKilopascals(18.5), TIGHT);
        assertEquals(15.559162950396193, MoistAir.dewPointDegrees(18.5, 83), TIGHT);
        assertEquals(0.3620621415579674, MoistAir.deficitKilopascals(18.5, 83), TIGHT);
        assertEquals(13.133443217767727, VapourContent.absolute(AIR, HUMIDITY).gramsPerCubicMetre(), TIGHT);
        assertEquals(
                0.011204658802648749,
                VapourContent.ratio(AIR, HUMIDITY, AirPressure.at(120)).kilogramsPerKilogram(),
                TIGHT);
        assertEquals(
                16.63335372024639,
                Psychrometer.WMO.wetBulb(AIR, HUMIDITY, AirPressure.SEA_LEVEL).degrees(),
                TIGHT);
    }

    @Test
    void sun_and_clear_sky_are_as_they_were() {
        Site valley = new Site(51.98, 5.66, 10);
        Instant morning = Instant.parse("2026-04-20T07:30:00Z");
        assertEquals(63.57381073639985, Sun.position(valley, morning).zenith(), TIGHT);
        assertEquals(427.9873938668543, ClearSky.global(valley, morning).wattsPerSquareMetre(), TIGHT);
        assertEquals(24.176728177092613, new DailyRadiation(51.98, 110).clearSkyMegajoules(10), TIGHT);
    }
}
