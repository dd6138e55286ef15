package bagward.demo.physics;

/**
 * Air and water of a room in which harvested heads hang: heads that give off water, a dryer that takes it out of the air, a
 * little air from outside. Explicit steps of ten seconds.
 */
public final class DryingRoom {
    private static final double SUB_STEP_SECONDS = 10;
    private static final double VOLUME = 60;
    private static final double OUTSIDE_AIR = 0.0025;
    private static final double DRYER_AIR = 0.03;
    private static final double DRYER_STARTS_PERCENT = 46;
    private static final double DRYER_RESTS_PERCENT = 42;
    private static final double DRYER_COIL_CELSIUS = 3;
    private static final double HEATED_CELSIUS = 19;
    private static final double SHARE_OF_OUTSIDE = 0.15;
    private static final double WARMING_SECONDS = 5400;

    /** Air that takes up water at the heads, m³ s⁻¹ for each kg of dry matter. */
    private static final double EXCHANGE_A_KILOGRAM = 0.0003;

    /** Water for each kg of dry matter at which the air at the heads is half saturated, kg. */
    private static final double HALF_SATURATED = 0.12;

    private double air = HEATED_CELSIUS;
    private double density = 0.45 * Vapour.saturationDensity(HEATED_CELSIUS);
    private double dryMatter;
    private double water;
    private boolean works = true;
    private boolean dries;

    /**
     * Hangs up fresh heads.
     *
     * @param dryKilograms their dry matter, kg
     * @param waterKilograms the water in them, kg
     */
    public void hang(double dryKilograms, double waterKilograms) {
        dryMatter += dryKilograms;
        water += waterKilograms;
    }

    /** The dryer trips, as one does whose tank is full. */
    public void trip() {
        works = false;
    }

    /** The air after a time under this weather. */
    public HouseAir step(Weather outside, double seconds) {
        int steps = (int) Math.max(1, Math.round(seconds / SUB_STEP_SECONDS));
        for (int i = 0; i < steps; i++) {
            subStep(outside, seconds / steps);
        }
        return new HouseAir(air, density, air, 0, 0.05);
    }

    private void subStep(Weather outside, double dt) {
        double percent = Vapour.percent(density, air);
        dries = works && percent > (dries ? DRYER_RESTS_PERCENT : DRYER_STARTS_PERCENT);
        double warmTo = HEATED_CELSIUS + SHARE_OF_OUTSIDE * (outside.celsius() - 8);
        double given = given();
        double vented = OUTSIDE_AIR * (density - outside.vapourDensity());
        double dried = dries ? DRYER_AIR * Math.max(0, density - Vapour.saturationDensity(DRYER_COIL_CELSIUS)) : 0;
        air += dt * (warmTo - air) / WARMING_SECONDS;
        water = Math.max(0, water - dt * given);
        density += dt * (given - vented - dried) / VOLUME;
    }

    /** Water that the heads give off, kg s⁻¹; below 0 when they take some up. */
    private double given() {
        if (dryMatter == 0) {
            return 0;
        }
        double content = water / dryMatter;
        double atHeads = content / (content + HALF_SATURATED) * Vapour.saturationDensity(air);
        return EXCHANGE_A_KILOGRAM * dryMatter * (atHeads - density);
    }
}
