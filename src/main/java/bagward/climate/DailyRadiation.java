package bagward.climate;

import bagward.units.Checks;

/**
 * Radiation of a whole day from latitude and date; FAO-56 chapter 3, equations 21 to 37.
 *
 * <p>Days are numbered 1 to 366 within the year. The day length is the geometric one: it leaves out refraction and the
 * width of the sun, so it is about a quarter of an hour shorter than sunrise to sunset of {@link Sun} at 52° N.
 *
 * @param latitude degrees, north positive
 * @param dayOfYear 1 to 366
 */
public record DailyRadiation(double latitude, int dayOfYear) {
    /** Solar constant, MJ m⁻² min⁻¹. */
    static final double SOLAR_CONSTANT = 0.0820;

    private static final double MINUTES_OF_DAY = 24 * 60;

    /** Refuses what is not on the globe or in the year. */
    public DailyRadiation {
        Checks.within("latitude", latitude, -90, 90, "°");
        Checks.within("day of the year", dayOfYear, 1, 366, "");
    }

    /** Inverse relative distance to the sun, no unit; equation 23. */
    public double inverseRelativeDistance() {
        return 1 + 0.033 * Math.cos(yearAngle());
    }

    /** Solar declination, rad; equation 24. */
    public double declination() {
        return 0.409 * Math.sin(yearAngle() - 1.39);
    }

    /** Hour angle of sunset, rad; equation 25, 0 in polar night and π in polar day. */
    public double sunsetHourAngle() {
        double cosine = -Math.tan(latitudeRadians()) * Math.tan(declination());
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Geometric day length, h; equation 34. */
    public double daylightHours() {
        return 24 / Math.PI * sunsetHourAngle();
    }

    /** Extraterrestrial radiation on a level surface, MJ m⁻² d⁻¹; equation 21. */
    public double extraterrestrialMegajoules() {
        double sunset = sunsetHourAngle();
        return MINUTES_OF_DAY
                / Math.PI
                * SOLAR_CONSTANT
                * inverseRelativeDistance()
                * (sunset * Math.sin(latitudeRadians()) * Math.sin(declination())
                        + Math.cos(latitudeRadians()) * Math.cos(declination()) * Math.sin(sunset));
    }

    /** Radiation of a cloudless day at an elevation in m, MJ m⁻² d⁻¹; equation 37. */
    public double clearSkyMegajoules(double elevation) {
        return clearShare(elevation) * extraterrestrialMegajoules();
    }

    /**
     * Radiation of a day from its hours of bright sunshine, MJ m⁻² d⁻¹; equation 35 with 0.25 and 0.50.
     *
     * @param sunshineHours h, 0 to the day length
     */
    public double sunshineMegajoules(double sunshineHours) {
        Checks.within("hours of sunshine", sunshineHours, 0, daylightHours(), "h");
        double share = daylightHours() == 0 ? 0 : sunshineHours / daylightHours();
        return (0.25 + 0.50 * share) * extraterrestrialMegajoules();
    }

    /** Share of the extraterrestrial radiation that reaches the ground under a cloudless sky; equation 37. */
    static double clearShare(double elevation) {
        return 0.75 + 2e-5 * elevation;
    }

    double latitudeRadians() {
        return Math.toRadians(latitude);
    }

    private double yearAngle() {
        return 2 * Math.PI * dayOfYear / 365;
    }
}
