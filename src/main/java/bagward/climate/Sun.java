package bagward.climate;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;

/**
 * Where the sun stands, and when it rises and sets: the Solar Position Algorithm of Reda and Andreas (NREL/TP-560-34302,
 * 2008; Solar Energy 76:577, 2004), stated uncertainty 0.0003°, as the library solarpositioning carries it.
 */
public final class Sun {
    private static final double SECONDS_PER_DEGREE = 240;
    private static final Duration ONE_DAY = Duration.ofDays(1);

    private Sun() {}

    /** Position without refraction by the atmosphere: the true direction, which sunshine is computed from. */
    public static SunPosition position(Site site, Instant instant) {
        ZonedDateTime time = instant.atZone(ZoneOffset.UTC);
        SolarPosition position = SPA.calculateSolarPosition(
                time, site.latitude(), site.longitude(), site.elevation(), deltaT(time.toLocalDate()));
        return new SunPosition(position.azimuth(), position.zenithAngle());
    }

    /**
     * Position as the eye sees it, refracted by air.
     *
     * @param hectopascals air pressure, hPa
     * @param celsius air temperature, °C
     */
    public static SunPosition apparentPosition(Site site, Instant instant, double hectopascals, double celsius) {
        ZonedDateTime time = instant.atZone(ZoneOffset.UTC);
        SolarPosition position = SPA.calculateSolarPosition(
                time,
                site.latitude(),
                site.longitude(),
                site.elevation(),
                deltaT(time.toLocalDate()),
                hectopascals,
                celsius);
        return new SunPosition(position.azimuth(), position.zenithAngle());
    }

    /**
     * Sunrise, transit and sunset of the solar day whose noon lies in a civil day. In high summer under daylight saving
     * the sunset may fall after midnight; it still is the one that follows the sunrise.
     */
    public static SunDay day(Site site, LocalDate day, ZoneId zone) {
        Span civil = Span.ofDay(day, zone);
        SunDay sun = solarDay(site, day);
        if (sun.transit().isBefore(civil.from())) {
            return solarDay(site, day.plusDays(1));
        }
        return civil.holds(sun.transit()) ? sun : solarDay(site, day.minusDays(1));
    }

    /** Counted in mean solar time of the place, so that noon is in the middle and the night at the ends. */
    private static SunDay solarDay(Site site, LocalDate day) {
        ZoneOffset meanSolarTime = ZoneOffset.ofTotalSeconds((int) Math.round(site.longitude() * SECONDS_PER_DEGREE));
        ZonedDateTime noon = day.atTime(12, 0).atZone(meanSolarTime);
        SunriseResult result = SPA.calculateSunriseTransitSet(noon, site.latitude(), site.longitude(), deltaT(day));
        Instant transit = result.transit().toInstant();
        if (result instanceof SunriseResult.RegularDay regular) {
            Instant sunrise = regular.sunrise().toInstant();
            Instant sunset = regular.sunset().toInstant();
            // days before and after polar day: the calendar day may cut the short night off at its wrong end
            return new SunDay.Regular(
                    sunrise.isAfter(transit) ? sunrise.minus(ONE_DAY) : sunrise,
                    transit,
                    sunset.isBefore(transit) ? sunset.plus(ONE_DAY) : sunset);
        }
        return result instanceof SunriseResult.AllDay ? new SunDay.UpAllDay(transit) : new SunDay.DownAllDay(transit);
    }

    /** Terrestrial minus universal time, s; an error of seconds in it moves the sun by less than 0.0002°. */
    private static double deltaT(LocalDate day) {
        return DeltaT.estimate(day);
    }
}
