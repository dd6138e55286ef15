package bagward.demo.physics;

/**
 * Pollen on the flowers of a demo house: anthers ripen over night, open in light and dry air, and lose what they shed to
 * age; heat spoils it. Invented for the demo, and not the model that the pollen page fits.
 */
public final class PollenSupply {
    private static final double OPENING_PER_HOUR = 0.7;
    private static final double HALF_LIGHT = 260;
    private static final double TOO_HUMID = 97;
    private static final double HOT_CELSIUS = 30;
    private static final double SPOILT_PER_HOUR = 0.2;
    private static final double LEFT_OVER_NIGHT = 0.12;
    private static final double HOUR = 3600;

    private double ripe = 1;
    private double shed;
    private double sound = 1;

    /** The night between two days: new anthers ripen, old pollen is mostly gone, plants recover from heat slowly. */
    public void night() {
        ripe = 1;
        shed *= LEFT_OVER_NIGHT;
        sound += 0.3 * (1 - sound);
    }

    /** A time in this air. */
    public void step(HouseAir air, double seconds) {
        double light = air.globalLight() / (air.globalLight() + HALF_LIGHT);
        double dryness = Math.max(0, 1 - air.percent() / TOO_HUMID);
        double opened = ripe * OPENING_PER_HOUR * light * Math.sqrt(dryness) * seconds / HOUR;
        ripe -= opened;
        shed += opened;
        if (air.celsius() > HOT_CELSIUS) {
            sound -= sound * SPOILT_PER_HOUR * seconds / HOUR;
        }
    }

    /** Sound pollen that is there to be taken, 0 to about 1. */
    public double available() {
        return shed * sound;
    }
}
