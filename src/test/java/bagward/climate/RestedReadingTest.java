package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RestedReadingTest {
    private static final Instant END = Instant.parse("2026-03-29T01:00:00Z");
    private static final SensorId SENSOR = new SensorId("spare-1");
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final List<Reading> readings = new ArrayList<>();

    @Test
    void a_sensor_at_rest_is_read_as_the_mean_of_its_last_quarter_of_an_hour() {
        humidity(20, 60);
        humidity(15, 76);
        humidity(5, 75.6);
        humidity(0, 75.5);
        temperature(3, 20);
        RestedReading rest = before(MINUTE, Optional.empty());
        assertEquals(75.7, rest.humidity().percent(), 1e-9);
        assertEquals(20, rest.temperature().degrees(), 1e-9);
        assertEquals(0.5, rest.moved(), 1e-9);
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        humidity(12, 76);
        humidity(5, 75.6);
        humidity(0, 75.5);
        temperature(3, 20);
        RestedReading rest = before(MINUTE, Optional.empty());
        Collections.reverse(readings);
        assertEquals(rest, before(MINUTE, Optional.empty()));
    }

    @Test
    void a_slow_sensor_is_given_four_of_its_intervals() {
        for (int minutes = 0; minutes <= 40; minutes += 10) {
            humidity(minutes, 94);
        }
        Celsius stated = new Celsius(19.5);
        assertEquals(stated, before(Duration.ofMinutes(10), Optional.of(stated)).temperature());
        assertTrue(refused(MINUTE).contains("sent 2 readings"));
    }

    @Test
    void a_sensor_that_still_moves_is_told_to_wait() {
        humidity(10, 73.9);
        humidity(5, 74.6);
        humidity(0, 75.0);
        temperature(0, 20);
        assertTrue(refused(MINUTE).contains("moved by 1.1 %RH"), refused(MINUTE));
    }

    @Test
    void a_sensor_at_its_upper_end_is_told_to_take_a_drier_salt() {
        SeriesId series = new SeriesId(SENSOR, Quantity.HUMIDITY);
        for (int i = 0; i < 5; i++) {
            readings.add(new Reading(series, END.minusSeconds(60L * i), 100, Set.of(ReadingFlag.HUMIDITY_CAPPED)));
        }
        assertTrue(refused(MINUTE).contains("drier salt"));
    }

    @Test
    void without_a_temperature_one_is_asked_for() {
        humidity(10, 75);
        humidity(5, 75);
        humidity(0, 75);
        assertTrue(refused(MINUTE).contains("no temperature"));
    }

    private String refused(Duration every) {
        return assertThrows(ImpossibleValueException.class, () -> before(every, Optional.empty()))
                .getMessage();
    }

    private RestedReading before(Duration every, Optional<Celsius> stated) {
        return RestedReading.before(new FixedReadings(readings), SENSOR, every, END, stated);
    }

    private void humidity(int minutesBefore, double percent) {
        readings.add(
                Reading.of(new SeriesId(SENSOR, Quantity.HUMIDITY), END.minusSeconds(60L * minutesBefore), percent));
    }

    private void temperature(int minutesBefore, double celsius) {
        readings.add(
                Reading.of(new SeriesId(SENSOR, Quantity.TEMPERATURE), END.minusSeconds(60L * minutesBefore), celsius));
    }
}
