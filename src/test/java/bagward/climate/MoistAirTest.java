package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Pascal;
import bagward.units.RelativeHumidity;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistAirTest {
    private static final int TRIES = 200;

    @ParameterizedTest
    @CsvFileSource(resources = "/climate/psychrolib-grid.csv", useHeadersInDisplayName = true)
    void agrees_with_psychrolib_over_a_dense_grid(
            double t, double rh, double vapour, double dewPoint, double wetBulb, double ratio, double deficit) {
        Celsius air = new Celsius(t);
        RelativeHumidity humidity = new RelativeHumidity(rh);
        assertEquals(vapour, MoistAir.vapourPressure(air, humidity).value(), 0.0014 * vapour);
        assertEquals(deficit, MoistAir.deficit(air, humidity).value(), 0.0014 * deficit + 0.01);
        assertEquals(dewPoint, MoistAir.dewPoint(air, humidity).degrees(), rh >= 80 ? 0.01 : 0.03);
        double atSeaLevel =
                VapourContent.ratio(air, humidity, AirPressure.SEA_LEVEL).kilogramsPerKilogram();
        assertEquals(ratio, atSeaLevel, 0.0018 * ratio);
        double wet =
                Psychrometer.WMO.wetBulb(air, humidity, AirPressure.SEA_LEVEL).degrees();
        // a psychrometer is not an adiabatic saturator: the two part in hot air, most where it is dry
        assertEquals(wetBulb, wet, rh >= 90 ? 0.025 : rh > 20 ? 0.2 : 0.27);
    }

    @RepeatedTest(5)
    void humidity_and_dew_point_give_each_other_back(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        for (int i = 0; i < TRIES; i++) {
            double t = -20 + 80 * random.nextDouble();
            double rh = 1 + 99 * random.nextDouble();
            double dewPoint = MoistAir.dewPointDegrees(t, rh);
            double vapour = MoistAir.vapourKilopascals(t, rh);
            assertEquals(rh, MoistAir.relativeHumidityPercent(t, vapour), 1e-10);
            assertEquals(dewPoint, MoistAir.dewPointDegrees(vapour), 1e-10);
            assertEquals(vapour, MoistAir.saturationKilopascals(dewPoint), 1e-12);
            double deficit = MoistAir.deficitKilopascals(t, rh);
            assertEquals(MoistAir.saturationKilopascals(t), vapour + deficit, 1e-12);
            assertTrue(dewPoint <= t);
        }
    }

    @RepeatedTest(5)
    void warmer_air_holds_more_and_damper_air_has_a_higher_dew_point(RepetitionInfo repetition) {
        Random random = new Random(100 + repetition.getCurrentRepetition());
        for (int i = 0; i < TRIES; i++) {
            double t = -20 + 80 * random.nextDouble();
            double rh = 1 + 98 * random.nextDouble();
            double more = 0.001 + random.nextDouble();
            assertTrue(MoistAir.saturationKilopascals(t + more) > MoistAir.saturationKilopascals(t));
            assertTrue(MoistAir.dewPointDegrees(t, rh + more) > MoistAir.dewPointDegrees(t, rh));
            assertTrue(MoistAir.deficitKilopascals(t, rh + more) < MoistAir.deficitKilopascals(t, rh));
            assertTrue(MoistAir.dewPointDegrees(t + more, rh) > MoistAir.dewPointDegrees(t, rh));
        }
    }

    @RepeatedTest(5)
    void the_wet_bulb_lies_between_dew_point_and_air(RepetitionInfo repetition) {
        Random random = new Random(200 + repetition.getCurrentRepetition());
        for (int i = 0; i < TRIES; i++) {
            Celsius air = new Celsius(60 * random.nextDouble());
            RelativeHumidity humidity = new RelativeHumidity(5 + 95 * random.nextDouble());
            for (Psychrometer kind : Psychrometer.values()) {
                Celsius wet = kind.wetBulb(air, humidity, AirPressure.SEA_LEVEL);
                assertTrue(wet.degrees() <= air.degrees());
                assertTrue(wet.degrees() >= MoistAir.dewPoint(air, humidity).degrees() - 1e-9);
                Pascal back = kind.vapourPressure(air, wet, AirPressure.SEA_LEVEL);
                assertEquals(MoistAir.vapourPressure(air, humidity).value(), back.value(), 1e-3);
            }
        }
    }

    @Test
    void the_mean_of_deficits_is_not_the_deficit_of_means() {
        double sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            double t = 20 + 8 * Math.sin(2 * Math.PI * hour / 24);
            sum += MoistAir.saturationKilopascals(t) - 1.4;
        }
        // 1.064 and 0.938 kPa: day of 20 ± 8 °C at a constant 1.4 kPa, worked out by hand
        assertEquals(1.064, sum / 24, 0.001);
        assertEquals(0.938, MoistAir.saturationKilopascals(20) - 1.4, 0.001);
    }

    @Test
    void humidity_is_over_water_below_freezing_too() {
        // ice would give 401.76 Pa (psychrolib 1.1.1), supercooled water 421.8 Pa (Murphy and Koop 2005)
        assertEquals(421.8, MoistAir.saturation(new Celsius(-5)).value(), 0.0015 * 421.8);
    }

    @Test
    void water_condenses_on_a_surface_at_the_dew_point_and_not_above() {
        Celsius air = new Celsius(20);
        RelativeHumidity humidity = new RelativeHumidity(90);
        double dewPoint = MoistAir.dewPoint(air, humidity).degrees();
        assertTrue(ColdSurface.condenses(air, humidity, new Celsius(dewPoint - 0.001)));
        assertFalse(ColdSurface.condenses(air, humidity, new Celsius(dewPoint + 0.001)));
        assertFalse(ColdSurface.condenses(20, Double.NaN, 0));
        assertEquals(100, ColdSurface.humidityAt(air, humidity, new Celsius(15)).percent());
        assertEquals(0, ColdSurface.deficit(air, humidity, new Celsius(15)).value());
        assertEquals(90, ColdSurface.humidityAt(air, humidity, air).percent(), 1e-9);
        assertTrue(ColdSurface.deficit(air, humidity, new Celsius(30)).value() > 2000);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 96.8", "1, 93.7"})
    void a_surface_a_little_colder_is_wet_only_in_damp_air(double colder, double percent) {
        // at 15 °C a surface 0.5 K colder is at the dew point from 96.8 %RH on, one 1 K colder from 93.7 (hand)
        assertTrue(ColdSurface.condenses(15, percent + 0.1, 15 - colder));
        assertFalse(ColdSurface.condenses(15, percent - 0.1, 15 - colder));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -273.15, 101})
    void impossible_temperatures_are_refused(double degrees) {
        assertThrows(ImpossibleValueException.class, () -> new Celsius(degrees));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -0.1, 100.1})
    void impossible_humidities_are_refused(double percent) {
        assertThrows(ImpossibleValueException.class, () -> new RelativeHumidity(percent));
    }

    @Test
    void air_without_vapour_has_no_dew_point() {
        assertThrows(ImpossibleValueException.class, () -> MoistAir.dewPoint(new Pascal(0)));
        assertThrows(ImpossibleValueException.class, () -> MoistAir.dewPoint(new Celsius(20), new RelativeHumidity(0)));
        assertEquals(Double.NEGATIVE_INFINITY, MoistAir.dewPointDegrees(20, 0));
        assertEquals(Double.NEGATIVE_INFINITY, MoistAir.dewPointDegrees(0));
    }

    @Test
    void twins_let_gaps_through() {
        assertTrue(Double.isNaN(MoistAir.dewPointDegrees(Double.NaN, 50)));
        assertTrue(Double.isNaN(MoistAir.dewPointDegrees(20, Double.NaN)));
        assertTrue(Double.isNaN(MoistAir.deficitKilopascals(20, Double.NaN)));
        assertTrue(Double.isNaN(MoistAir.relativeHumidityPercent(Double.NaN, 1)));
        assertTrue(Double.isNaN(VapourContent.gramsPerCubicMetre(20, Double.NaN)));
    }

    @Test
    void air_that_would_boil_has_no_humidity_ratio() {
        assertThrows(
                ImpossibleValueException.class,
                () -> VapourContent.ratio(new Celsius(100), RelativeHumidity.SATURATED, AirPressure.SEA_LEVEL));
    }

    @Test
    void a_wet_bulb_warmer_than_the_dry_one_is_refused() {
        assertThrows(
                ImpossibleValueException.class,
                () -> Psychrometer.WMO.vapourPressure(new Celsius(19), new Celsius(20), AirPressure.SEA_LEVEL));
    }
}
