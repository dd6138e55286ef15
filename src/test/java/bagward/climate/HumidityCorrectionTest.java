package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.climate.SaltCheck.Point;
import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Quantity;
import bagward.units.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HumidityCorrectionTest {
    private static final SensorId SENSOR = new SensorId("s");
    private static final SeriesId HUMIDITY = new SeriesId(SENSOR, Quantity.HUMIDITY);
    private static final SeriesId TEMPERATURE = new SeriesId(SENSOR, Quantity.TEMPERATURE);
    private static final Instant CHECKED = Days.MIDNIGHT;
    private static final Instant BEFORE = CHECKED.minusSeconds(1);
    private static final Instant LATER = CHECKED.plus(Duration.ofDays(60));

    @Test
    void a_checked_sensor_reads_the_salts_right() {
        HumidityCorrection correction = check(35.0, 96.0).correction();
        assertEquals(32.79, correction.applyTo(reading(CHECKED, 35.0)).value(), 0.02);
        assertEquals(93.59, correction.applyTo(reading(CHECKED, 96.0)).value(), 0.02);
        double middle = (32.79 + 93.59) / 2;
        assertEquals(middle, correction.applyTo(reading(CHECKED, 65.5)).value(), 0.02);
    }

    @Test
    void a_correction_holds_from_its_date_on_and_for_its_sensor_alone() {
        CorrectedReadings source = corrected(check(35.0, 96.0).correction());
        assertEquals(80, value(source, BEFORE));
        assertEquals(77.64, value(source, CHECKED), 0.02);
        assertEquals(20, source.newest(TEMPERATURE, LATER).orElseThrow().value());
        SeriesId other = new SeriesId(new SensorId("other"), Quantity.HUMIDITY);
        assertEquals(80, source.newest(other, LATER).orElseThrow().value());
    }

    @Test
    void the_newest_correction_replaces_the_one_before_and_raw_values_stay() {
        HumidityCorrection first = new HumidityCorrection(SENSOR, CHECKED, 1, 2);
        HumidityCorrection second = new HumidityCorrection(SENSOR, LATER, 1, -3);
        CorrectedReadings source = corrected(second, first);
        assertEquals(82, value(source, CHECKED));
        assertEquals(77, value(source, LATER));
        assertEquals(80, source.raw().newest(HUMIDITY, LATER).orElseThrow().value());
        assertEquals(
                List.of(80.0, 82.0, 77.0),
                source.readings(HUMIDITY, BEFORE, LATER.plusSeconds(1)).stream()
                        .map(Reading::value)
                        .toList());
    }

    @Test
    void what_a_correction_lifts_over_a_hundred_is_saturated_air() {
        HumidityCorrection correction = new HumidityCorrection(SENSOR, CHECKED, 1, 5);
        Reading capped = correction.applyTo(reading(CHECKED, 97));
        assertEquals(100, capped.value());
        assertEquals(Set.of(ReadingFlag.HUMIDITY_CAPPED), capped.flags());
        assertEquals(
                0,
                new HumidityCorrection(SENSOR, CHECKED, 1, -5)
                        .applyTo(reading(CHECKED, 3))
                        .value());
    }

    @ParameterizedTest
    @CsvSource({"49, 94", "33, 78"})
    void a_sensor_far_off_is_at_fault_and_not_corrected(double low, double high) {
        assertThrows(ImpossibleValueException.class, () -> check(low, high));
    }

    @Test
    void salts_close_together_or_the_wrong_way_round_are_refused() {
        Point nitrate = point(SaturatedSalt.POTASSIUM_NITRATE, 94);
        Point sulphate = point(SaturatedSalt.POTASSIUM_SULPHATE, 97);
        Point chloride = point(SaturatedSalt.MAGNESIUM_CHLORIDE, 33);
        assertThrows(ImpossibleValueException.class, () -> new SaltCheck(SENSOR, CHECKED, nitrate, sulphate));
        assertThrows(ImpossibleValueException.class, () -> new SaltCheck(SENSOR, CHECKED, nitrate, chloride));
    }

    @ParameterizedTest
    @ValueSource(doubles = {9, 36})
    void a_check_in_the_cold_or_heat_is_refused(double celsius) {
        assertThrows(
                ImpossibleValueException.class, () -> SaturatedSalt.SODIUM_CHLORIDE.humidity(new Celsius(celsius)));
    }

    private static SaltCheck check(double low, double high) {
        return new SaltCheck(
                SENSOR,
                CHECKED,
                point(SaturatedSalt.MAGNESIUM_CHLORIDE, low),
                point(SaturatedSalt.POTASSIUM_NITRATE, high));
    }

    private static Point point(SaturatedSalt salt, double read) {
        return new Point(salt, new Celsius(25), new RelativeHumidity(read));
    }

    private static CorrectedReadings corrected(HumidityCorrection... corrections) {
        SeriesId other = new SeriesId(new SensorId("other"), Quantity.HUMIDITY);
        FixedReadings raw = new FixedReadings(List.of(
                reading(BEFORE, 80),
                reading(CHECKED, 80),
                reading(LATER, 80),
                Reading.of(TEMPERATURE, LATER, 20),
                Reading.of(other, LATER, 80)));
        return new CorrectedReadings(raw, List.of(corrections));
    }

    private static double value(ReadingSource source, Instant at) {
        return source.newest(HUMIDITY, at).orElseThrow().value();
    }

    private static Reading reading(Instant at, double percent) {
        return Reading.of(HUMIDITY, at, percent);
    }
}
