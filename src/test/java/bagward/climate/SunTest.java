package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {
    private static final Site VALLEY = new Site(51.98, 5.66, 10);
    private static final Site ARCTIC = new Site(70, 20, 0);
    private static final ZoneId AMSTERDAM = ZoneId.of("Europe/Amsterdam");

    @ParameterizedTest
    @CsvFileSource(resources = "/climate/sun-positions.csv", useHeadersInDisplayName = true)
    void the_sun_stands_where_it_should(
            Instant instant,
            double latitude,
            double longitude,
            double elevation,
            @Nullable Double hectopascals,
            @Nullable Double celsius,
            double zenith,
            double azimuth,
            double tolerance) {
        Site site = new Site(latitude, longitude, elevation);
        SunPosition position = hectopascals == null || celsius == null
                ? Sun.position(site, instant)
                : Sun.apparentPosition(site, instant, hectopascals, celsius);
        assertEquals(zenith, position.zenith(), tolerance);
        assertEquals(azimuth, position.azimuth(), tolerance);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/climate/sun-times.csv", useHeadersInDisplayName = true)
    void the_sun_rises_and_sets_when_it_should(
            LocalDate date,
            String zone,
            double latitude,
            double longitude,
            LocalTime up,
            LocalTime down,
            long seconds) {
        ZoneOffset offset = ZoneOffset.of(zone);
        SunDay.Regular day =
                assertInstanceOf(SunDay.Regular.class, Sun.day(new Site(latitude, longitude, 0), date, offset));
        assertWithin(seconds, date.atTime(up).toInstant(offset), day.sunrise());
        assertWithin(seconds, date.atTime(down).toInstant(offset), day.sunset());
        assertTrue(day.sunrise().isBefore(day.transit()) && day.transit().isBefore(day.sunset()));
    }

    @Test
    void transit_of_the_published_example_is_where_it_should_be() {
        // NREL/TP-560-34302 Table A5.1: 11:46:05 local time
        SunDay day =
                Sun.day(new Site(39.742476, -105.1786, 1830.14), LocalDate.of(2003, 10, 17), ZoneOffset.ofHours(-7));
        assertWithin(2, Instant.parse("2003-10-17T18:46:05Z"), day.transit());
    }

    @Test
    void polar_day_and_polar_night_are_told_apart() {
        SunDay summer = Sun.day(ARCTIC, LocalDate.of(2026, 6, 21), ZoneOffset.UTC);
        SunDay winter = Sun.day(ARCTIC, LocalDate.of(2026, 12, 21), ZoneOffset.UTC);
        assertInstanceOf(SunDay.UpAllDay.class, summer);
        assertInstanceOf(SunDay.DownAllDay.class, winter);
        assertTrue(Sun.position(ARCTIC, summer.transit()).elevation() > 43);
        assertTrue(Sun.position(ARCTIC, winter.transit()).elevation() < -3);
    }

    @ParameterizedTest
    @CsvSource({"2026-03-29, 23", "2026-10-25, 25", "2026-06-21, 24"})
    void a_civil_day_is_as_long_as_the_clock_makes_it(LocalDate date, long hours) {
        Span day = Span.ofDay(date, AMSTERDAM);
        assertEquals(Duration.ofHours(hours), day.length());
        SunDay.Regular sun = assertInstanceOf(SunDay.Regular.class, Sun.day(VALLEY, date, AMSTERDAM));
        assertTrue(day.holds(sun.sunrise()) && day.holds(sun.sunset()));
    }

    @Test
    void the_day_of_the_zone_counts_on_the_far_side_of_the_globe() {
        ZoneId auckland = ZoneId.of("Pacific/Auckland");
        LocalDate date = LocalDate.of(2026, 12, 21);
        SunDay.Regular day =
                assertInstanceOf(SunDay.Regular.class, Sun.day(new Site(-36.85, 174.76, 0), date, auckland));
        assertEquals(date, day.sunrise().atZone(auckland).toLocalDate());
        assertEquals(date, day.sunset().atZone(auckland).toLocalDate());
    }

    @Test
    void a_sun_that_sets_after_midnight_never_sets_before_it_rises() {
        Site north = new Site(66.0, 22, 0);
        for (LocalDate date = LocalDate.of(2026, 5, 15); date.getMonthValue() < 8; date = date.plusDays(1)) {
            for (ZoneId zone : new ZoneId[] {ZoneOffset.UTC, ZoneId.of("Europe/Stockholm"), ZoneOffset.ofHours(5)}) {
                Sun.day(north, date, zone)
                        .daylight()
                        .ifPresent(light -> assertTrue(light.length().toHours() >= 17));
            }
        }
    }

    @Test
    void the_sum_of_the_clear_sky_agrees_with_the_daily_formula() {
        // FAO-56 example 18: 50.80 N, 6 July, sea level; Haurwitz gives 30.77 MJ by hand, FAO-56 30.82
        Site brussels = new Site(50.80, 4.35, 0);
        double sum = 0;
        Instant start = Instant.parse("2026-07-06T00:00:00Z");
        for (int minute = 0; minute < 1440; minute++) {
            sum += ClearSky.global(brussels, start.plusSeconds(60L * minute + 30))
                            .wattsPerSquareMetre()
                    * 60
                    / 1e6;
        }
        assertEquals(30.77, sum, 0.05);
        assertEquals(new DailyRadiation(50.80, 187).clearSkyMegajoules(0), sum, 0.1);
    }

    @Test
    void a_whole_day_of_hours_is_a_day() {
        DailyRadiation day = new DailyRadiation(52, 172);
        HourlyRadiation hours = new HourlyRadiation(day, 5.66, 15);
        double sum = 0;
        for (int quarter = 0; quarter < 96; quarter++) {
            sum += hours.extraterrestrialMegajoules(quarter / 4.0 + 0.125, 0.25);
        }
        assertEquals(day.extraterrestrialMegajoules(), sum, 0.01);
    }

    @Test
    void places_off_the_globe_are_refused() {
        assertThrows(ImpossibleValueException.class, () -> new Site(Double.NaN, 0, 0));
        assertThrows(ImpossibleValueException.class, () -> new Site(91, 0, 0));
        assertThrows(ImpossibleValueException.class, () -> new Site(0, 181, 0));
        assertThrows(ImpossibleValueException.class, () -> new DailyRadiation(52, 367));
        assertThrows(ImpossibleValueException.class, () -> new DailyRadiation(52, 172).sunshineMegajoules(17));
    }

    private static void assertWithin(long seconds, Instant expected, Instant actual) {
        long off = Math.abs(Duration.between(expected, actual).toSeconds());
        assertTrue(off <= seconds, () -> "expected " + expected + " within " + seconds + " s, was " + actual);
    }
}
