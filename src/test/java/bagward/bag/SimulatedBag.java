package bagward.bag;

import bagward.climate.MoistAir;

/**
 * A bag as several nodes, with other physics than the balance: a head with an energy balance and pores that follow
 * light, bag air, a film that radiates to the cover, exchange through holes by diffusion, wind and buoyancy, condensate
 * that is stored on the film and evaporates again. Step by step, implicit for the fast nodes.
 */
public final class SimulatedBag {
    private static final double STEP_SECONDS = 60;
    private static final double VOLUME = 0.002;
    private static final double FILM_AREA = 0.12;
    private static final double HEAD_AREA = 0.015;
    private static final double HEAD_CAPACITY = 200;
    private static final double FILM_CAPACITY = 10;
    private static final double AIR_CAPACITY = 1200;
    /** Latent heat over R_v T, J m⁻³ per kPa of vapour. */
    private static final double LATENT = 18_000;
    /** Water that a film holds before it runs off, 30 g m⁻², as m³ kPa of vapour; less wets a share of the film. */
    private static final double FULL_FILM = 0.48;

    /** Area of pores and head for vapour, m² times m s⁻¹. */
    private final double poreConductance;

    private final double filmHeatGain;
    private final double openExchange;
    private double exchange;
    private double head = Double.NaN;
    private double film;
    private double air;
    private double vapour;
    private double condensate;

    /**
     * A bag.
     *
     * @param closure share of vapour exchange from the head on a still night, 0 to 1
     * @param poreConductance of the head at night, m³ s⁻¹
     * @param filmHeatGain share of global light that the film takes up
     */
    SimulatedBag(double closure, double poreConductance, double filmHeatGain) {
        this.poreConductance = poreConductance;
        this.filmHeatGain = filmHeatGain;
        this.openExchange = poreConductance * (1 - closure) / closure;
        this.exchange = openExchange;
    }

    /** The bag falls shut: little exchange is left. */
    void shut() {
        exchange = 0.04 * openExchange;
    }

    /** The bag is blown off: the sensor hangs in house air, beside the head. */
    void blowOff() {
        exchange = 60 * openExchange;
    }

    /**
     * One minute.
     *
     * @param house temperature °C
     * @param houseVapour kPa
     * @param global light W m⁻²
     * @param wind multiplies the exchange, about 1
     * @param cover how much colder the cover is than the house, K
     */
    void minute(double house, double houseVapour, double global, double wind, double cover) {
        if (Double.isNaN(head)) {
            head = house;
            film = house;
            air = house;
            vapour = houseVapour;
        }
        double holes = exchange * wind * (1 + 0.15 * Math.sqrt(Math.abs(air - house)));
        double wake = global / (global + 80);
        double pores = poreConductance * (1 + 0.8 * wake);
        double transpired = pores * (MoistAir.saturationKilopascals(head) - vapour);
        double headExchange = 24 * HEAD_AREA;
        head += STEP_SECONDS
                / HEAD_CAPACITY
                * (0.5 * global * 0.006 + headExchange * (air - head) - LATENT * transpired);
        double inside = 4 * FILM_AREA;
        double outside = 6 * FILM_AREA;
        double radiation = 0.85 * 5.1 * 0.3 * FILM_AREA;
        film = (FILM_CAPACITY / STEP_SECONDS * film
                        + inside * air
                        + outside * house
                        + radiation * (house - cover)
                        + filmHeatGain * global * FILM_AREA * 0.5)
                / (FILM_CAPACITY / STEP_SECONDS + inside + outside + radiation);
        double carried = AIR_CAPACITY * holes;
        air = (AIR_CAPACITY * VOLUME / STEP_SECONDS * air + inside * film + headExchange * head + carried * house)
                / (AIR_CAPACITY * VOLUME / STEP_SECONDS + inside + headExchange + carried);
        water(houseVapour, holes, pores);
    }

    private void water(double houseVapour, double holes, double pores) {
        double onFilm = MoistAir.saturationKilopascals(film);
        double wetShare = vapour > onFilm ? 1 : Math.min(1, condensate / FULL_FILM);
        double toFilm = 0.003 * FILM_AREA * wetShare;
        vapour = (VOLUME / STEP_SECONDS * vapour
                        + holes * houseVapour
                        + pores * MoistAir.saturationKilopascals(head)
                        + toFilm * onFilm)
                / (VOLUME / STEP_SECONDS + holes + pores + toFilm);
        vapour = Math.min(vapour, MoistAir.saturationKilopascals(air));
        condensate = Math.max(0, Math.min(FULL_FILM, condensate + STEP_SECONDS * toFilm * (vapour - onFilm)));
    }

    double temperature() {
        return air;
    }

    double humidity() {
        return Math.min(100, 100 * vapour / MoistAir.saturationKilopascals(air));
    }
}
