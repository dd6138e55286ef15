package bagward.climate;

import bagward.units.Checks;

/**
 * Radiation of a period of hours or less by FAO-56 equations 28 to 33.
 *
 * <p>FAO-56 counts longitudes west of Greenwich; here they are east positive as everywhere else.
 *
 * @param day latitude and day of the year
 * @param longitude degrees, east positive
 * @param zoneLongitude degrees of the middle of the time zone, east positive: 15 for UTC+1
 */
public record HourlyRadiation(DailyRadiation day, double longitude, double zoneLongitude) {
    /** Hours for each degree of longitude, as printed in equation 31 (1/15 rounded). */
    private static final double HOURS_PER_DEGREE = 0.06667;

    /** Refuses what is not on the globe. */
    public HourlyRadiation {
        Checks.within("longitude", longitude, -180, 180, "°");
        Checks.within("longitude of the time zone", zoneLongitude, -180, 180, "°");
    }

    /** Seasonal correction for solar time, h; equations 32 and 33. */
    public double seasonalCorrectionHours() {
        double angle = 2 * Math.PI * (day.dayOfYear() - 81) / 364;
        return 0.1645 * Math.sin(2 * angle) - 0.1255 * Math.cos(angle) - 0.025 * Math.sin(angle);
    }

    /**
     * Solar hour angle, rad, 0 at solar noon; equation 31.
     *
     * @param clock standard time at the middle of the period, h from midnight
     */
    public double hourAngle(double clock) {
        double solar = clock + HOURS_PER_DEGREE * (longitude - zoneLongitude) + seasonalCorrectionHours();
        return Math.PI / 12 * (solar - 12);
    }

    /**
     * Extraterrestrial radiation of a period, MJ m⁻²; equations 28 to 30. Zero if the sun is down at its middle; a part
     * of the period that lies in the night counts as nothing.
     *
     * @param clock standard time at the middle of the period, h from midnight
     * @param hours length of the period, above 0 and at most 1
     */
    public double extraterrestrialMegajoules(double clock, double hours) {
        Checks.within("length of the period", hours, 1e-6, 1, "h");
        double middle = hourAngle(clock);
        double sunset = day.sunsetHourAngle();
        if (Math.abs(middle) > sunset) {
            return 0;
        }
        double from = Math.max(-sunset, middle - Math.PI * hours / 24);
        double to = Math.min(sunset, middle + Math.PI * hours / 24);
        double up = Math.sin(day.latitudeRadians()) * Math.sin(day.declination());
        double level = Math.cos(day.latitudeRadians()) * Math.cos(day.declination());
        double sum = (to - from) * up + level * (Math.sin(to) - Math.sin(from));
        return 12 * 60 / Math.PI * DailyRadiation.SOLAR_CONSTANT * day.inverseRelativeDistance() * sum;
    }

    /** Radiation of the period under a cloudless sky at an elevation in m, MJ m⁻²; equation 37. */
    public double clearSkyMegajoules(double clock, double hours, double elevation) {
        return DailyRadiation.clearShare(elevation) * extraterrestrialMegajoules(clock, hours);
    }
}
