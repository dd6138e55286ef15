package bagward.climate;

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

    /** Sunrise, transit and sunset of a civil day in a zone. */
    public static SunDay day(Site site, LocalDate day, ZoneId zone) {
        ZonedDateTime noon = day.atTime(12, 0).atZone(zone);
        SunriseResult result = SPA.calculateSunriseTransitSet(noon, site.latitude(), site.longitude(), deltaT(day));
        Instant transit = result.transit().toInstant();
        if (result instanceof SunriseResult.RegularDay regular) {
            return new SunDay.Regular(
                    regular.sunrise().toInstant(), transit, regular.sunset().toInstant());
        }
        return result instanceof SunriseResult.AllDay ? new SunDay.UpAllDay(transit) : new SunDay.DownAllDay(transit);
    }

    /** Terrestrial minus universal time, s; an error of seconds in it moves the sun by less than 0.0002°. */
    private static double deltaT(LocalDate day) {
        return DeltaT.estimate(day);
    }
}
