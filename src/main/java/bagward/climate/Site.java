package bagward.climate;

import bagward.units.Checks;

/**
 * A place on the globe.
 *
 * @param latitude degrees, north positive, −90 to 90
 * @param longitude degrees, east positive, −180 to 180
 * @param elevation m above sea level, −430 to 6000
 */
public record Site(double latitude, double longitude, double elevation) {
    /** Refuses what is not on the globe; the solar library would let NaN through. */
    public Site {
        Checks.within("latitude", latitude, -90, 90, "°");
        Checks.within("longitude", longitude, -180, 180, "°");
        Checks.within("elevation", elevation, -430, 6000, "m");
    }
}
