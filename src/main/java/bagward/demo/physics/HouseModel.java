package bagward.demo.physics;

/**
 * Energy and vapour of one glasshouse: sun through glass, heating, vents, plants that transpire, a floor that stores
 * heat and is partly wet, and glass that is cold enough to condense on. Explicit steps of ten seconds.
 */
public final class HouseModel {
    private static final double SUB_STEP_SECONDS = 10;
    private static final double HEIGHT = 4;
    private static final double AIR_CAPACITY = HEIGHT * Vapour.AIR_HEAT + 3000;
    private static final double FLOOR_CAPACITY = 150_000;
    private static final double GLASS_PER_FLOOR = 1.3;
    private static final double GLASS_CAPACITY = GLASS_PER_FLOOR * 8000;
    private static final double LEAF_CAPACITY_PER_AREA = 900;
    private static final double BOUNDARY_RESISTANCE = 150;
    private static final double RADIATIVE = 4.5;
    private static final double FLOOR_EXCHANGE = 6;
    private static final double GLASS_INSIDE_EXCHANGE = 4.5;
    private static final double GLASS_MASS_TRANSFER = 0.0042;
    private static final double FLOOR_MASS_TRANSFER = 0.003;

    private final HouseDesign design;
    private final HouseControl control;
    private double air = 14;
    private double floor = 14;
    private double glass = 9;
    private double leaf = 14;
    private double density = 0.75 * Vapour.saturationDensity(14);

    /** A house at rest on a spring night. */
    public HouseModel(HouseDesign design) {
        this.design = design;
        this.control = new HouseControl(design);
    }

    /** The air in the middle of the house after a time under this weather. */
    public HouseAir step(Weather weather, double seconds) {
        int steps = (int) Math.max(1, Math.round(seconds / SUB_STEP_SECONDS));
        for (int i = 0; i < steps; i++) {
            subStep(weather, seconds / steps);
        }
        double light = design.transmission() * weather.globalLight();
        double speed = 0.08 + 0.1 * control.vent() * weather.wind();
        return new HouseAir(air, density, glass, light, speed);
    }

    private void subStep(Weather weather, double dt) {
        double sun = design.transmission() * weather.globalLight();
        control.step(air, Vapour.percent(density, air), sun, dt);
        double exchange = HEIGHT * (0.4 + control.vent() * (6 + 6 * weather.wind())) / 3600;
        double transpired = transpiration(sun);
        double fromFloor =
                design.wetFloor() * FLOOR_MASS_TRANSFER * Math.max(0, Vapour.saturationDensity(floor) - density);
        double condensed =
                GLASS_PER_FLOOR * GLASS_MASS_TRANSFER * Math.max(0, density - Vapour.saturationDensity(glass));
        double leafToAir = design.leafArea() * 2 * Vapour.AIR_HEAT / BOUNDARY_RESISTANCE * (leaf - air);
        double floorToAir = FLOOR_EXCHANGE * (floor - air);
        double airToGlass = GLASS_PER_FLOOR * GLASS_INSIDE_EXCHANGE * (air - glass);
        double leafToGlass = RADIATIVE * 0.7 * (leaf - glass);
        double floorToGlass = RADIATIVE * 0.3 * (floor - glass);
        double outwards = GLASS_PER_FLOOR * (5 + 3 * weather.wind()) * (glass - weather.celsius())
                + RADIATIVE * (glass - weather.skyCelsius());
        double vented = Vapour.AIR_HEAT * exchange * (air - weather.celsius());

        leaf += dt
                * (0.5 * sun - leafToAir - leafToGlass - Vapour.LATENT_HEAT * transpired)
                / (design.leafArea() * LEAF_CAPACITY_PER_AREA);
        floor += dt * (0.25 * sun - floorToAir - floorToGlass - Vapour.LATENT_HEAT * fromFloor) / FLOOR_CAPACITY;
        glass += dt
                * (airToGlass + leafToGlass + floorToGlass + Vapour.LATENT_HEAT * condensed - outwards)
                / GLASS_CAPACITY;
        air += dt * (0.15 * sun + control.pipe() + leafToAir + floorToAir - airToGlass - vented) / AIR_CAPACITY;
        density += dt * (transpired + fromFloor - condensed - exchange * (density - weather.vapourDensity())) / HEIGHT;
    }

    /** Water that the leaves give off, kg m⁻² s⁻¹; stomata open with light. */
    private double transpiration(double sun) {
        double stomata = 90 * (sun + 4) / (sun + 0.6);
        double deficit = Math.max(0, Vapour.saturationDensity(leaf) - density);
        return design.leafArea() * deficit / (BOUNDARY_RESISTANCE + stomata);
    }
}
