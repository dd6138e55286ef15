package bagward.demo.physics;

/**
 * One bag as four stores: film, air, head, and water on the film. The film loses heat to the cold glass at night and is
 * where water condenses and from where it evaporates again; the head takes the sun, transpires and holds heat; holes
 * exchange more when the air moves. Air and film react within seconds, so each step solves them implicitly.
 */
public final class BagModel {
    private static final double SUB_STEP_SECONDS = 10;
    private static final double FILM_CAPACITY_PER_AREA = 80;
    private static final double RADIATIVE = 4.2;
    private static final double HEAD_HEAT_CAPACITY = 3900;
    private static final double HEAD_EXCHANGE = 9;
    private static final double HEAD_SUN_SHARE = 0.7;
    private static final double HEAD_SUN_AREA_SHARE = 0.6;
    private static final double FILM_MASS_TRANSFER = 0.0035;
    private static final double MOST_DROPS_PER_AREA = 0.03;

    private BagDesign design;
    private double air = 14;
    private double film = 14;
    private double head = 14;
    private double density = 0.8 * Vapour.saturationDensity(14);
    private double water;
    private double condensing;
    private double transpiring;

    /** A dry bag that was just put on. */
    public BagModel(BagDesign design) {
        this.design = design;
    }

    /** The bag slides down and closes round the stalk; it stays so. */
    public void fallShut() {
        design = design.shut();
    }

    /** The inside after a time in this air of the house. */
    public BagAir step(HouseAir house, double seconds) {
        int steps = (int) Math.max(1, Math.round(seconds / SUB_STEP_SECONDS));
        for (int i = 0; i < steps; i++) {
            double dt = seconds / steps;
            moveVapour(house, dt);
            moveHeat(house, dt);
            settleFog();
        }
        return new BagAir(air, density, film, head, water);
    }

    private void moveVapour(HouseAir house, double dt) {
        double fromHead = design.headArea() * headConductance(house.globalLight());
        double holes = openness(house);
        double store = design.volume() / dt;
        double onFilm = Vapour.saturationDensity(film);
        double atHead = Vapour.saturationDensity(head);
        double gains = store * density + fromHead * atHead + holes * house.vapourDensity();
        double losses = store + fromHead + holes;
        double toFilm = FILM_MASS_TRANSFER * design.filmArea();
        double wetFilm = (gains + toFilm * onFilm) / (losses + toFilm);
        condensing = Math.max(toFilm * (wetFilm - onFilm), -water / dt);
        density = (gains - condensing) / losses;
        transpiring = fromHead * (atHead - density);
        water = Math.min(MOST_DROPS_PER_AREA * design.filmArea(), Math.max(0, water + dt * condensing));
    }

    private void moveHeat(HouseAir house, double dt) {
        double inside = 3.5 * design.filmArea();
        double outside = (3 + 6 * Math.sqrt(house.airSpeed())) * design.filmArea();
        double toGlass = 0.5 * RADIATIVE * design.filmArea();
        double headToAir = HEAD_EXCHANGE * design.headArea();
        double headToFilm = RADIATIVE * design.headArea();
        double holes = Vapour.AIR_HEAT * openness(house);
        double filmSun = 0.5 * design.filmArea() * design.absorbs() * house.globalLight();
        double headSun =
                HEAD_SUN_SHARE * HEAD_SUN_AREA_SHARE * design.headArea() * design.transmits() * house.globalLight();
        double filmStore = FILM_CAPACITY_PER_AREA * design.filmArea() / dt;

        film = (filmStore * film
                        + inside * air
                        + outside * house.celsius()
                        + toGlass * (0.5 * house.glassCelsius() + 0.5 * house.celsius())
                        + headToFilm * head
                        + filmSun
                        + Vapour.LATENT_HEAT * condensing)
                / (filmStore + inside + outside + toGlass + headToFilm);
        air = (inside * film + headToAir * head + holes * house.celsius()) / (inside + headToAir + holes);
        double headStore = HEAD_HEAT_CAPACITY * design.headKilograms() / dt;
        head = (headStore * head + headToAir * air + headToFilm * film + headSun - Vapour.LATENT_HEAT * transpiring)
                / (headStore + headToAir + headToFilm);
    }

    /** Air that got colder than its dew point gives its fog to the water in the bag. */
    private void settleFog() {
        double fog = Math.max(0, density - Vapour.saturationDensity(air));
        density -= fog;
        water = Math.min(MOST_DROPS_PER_AREA * design.filmArea(), water + fog * design.volume());
    }

    private double openness(HouseAir house) {
        return design.openness() + design.opennessPerWind() * house.airSpeed();
    }

    /** Stomata and skin of the head together, m s⁻¹: they open with light. */
    private static double headConductance(double light) {
        return 0.0007 + 0.0009 * light / (light + 60);
    }
}
