package bagward.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeatherMakerTest {
    private static final Instant START = Instant.parse("2026-04-12T00:00:00Z");

    @Test
    void the_same_seed_gives_the_same_weather_and_another_seed_another() {
        assertEquals(days(7, 3), days(7, 3));
        assertNotEquals(days(7, 3), days(8, 3));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 7, 99})
    void weather_stays_within_what_a_northern_spring_can_do(long seed) {
        for (Weather weather : days(seed, 30)) {
            assertTrue(weather.celsius() > -12 && weather.celsius() < 30, () -> "temperature " + weather);
            assertTrue(weather.globalLight() >= 0 && weather.globalLight() < 1100, () -> "light " + weather);
            assertTrue(weather.skyCelsius() < weather.celsius(), () -> "sky " + weather);
            assertTrue(weather.wind() >= 0.3 && weather.wind() < 12, () -> "wind " + weather);
            double percent = Vapour.percent(weather.vapourDensity(), weather.celsius());
            assertTrue(percent > 15 && percent <= 100, () -> "humidity " + percent);
        }
    }

    @Test
    void the_sun_shines_by_day_and_not_by_night() {
        List<Weather> minutes = days(7, 1);
        assertEquals(0, minutes.get(60).globalLight(), "one in the morning");
        assertTrue(minutes.get(11 * 60).globalLight() > 50, "before noon");
    }

    @Test
    void a_month_brings_bright_and_dull_days() {
        List<Weather> minutes = days(7, 30);
        List<Double> sums = new ArrayList<>();
        for (int day = 0; day < 30; day++) {
            sums.add(minutes.subList(day * 1440, (day + 1) * 1440).stream()
                    .mapToDouble(w -> w.globalLight() * 60 / 1e6)
                    .sum());
        }
        double brightest = sums.stream().mapToDouble(s -> s).max().orElseThrow();
        double dullest = sums.stream().mapToDouble(s -> s).min().orElseThrow();
        assertTrue(brightest > 2 * dullest, "MJ m⁻² d⁻¹ " + sums);
        assertTrue(brightest < 30, "a clear day there and then has 24 to 28 MJ m⁻² d⁻¹ (FAO-56 equation 37): " + sums);
    }

    private static List<Weather> days(long seed, int days) {
        WeatherMaker maker = new WeatherMaker(seed, new Site(54.12, 10.35, 31));
        List<Weather> minutes = new ArrayList<>();
        for (int minute = 0; minute < days * 1440; minute++) {
            minutes.add(maker.next(START.plusSeconds(60L * (minute + 1))));
        }
        return minutes;
    }
}
