package bagward.bag;

/**
 * What is believed of the climate of one bag: the parameters of the balance, each with how sure it is for a single bag
 * (spread between bags included), and what the balance leaves unexplained.
 *
 * @param closureByDay f by day, 0 to 1
 * @param closureByNight f by night, 0 to 1
 * @param sunGain k, K per (W m⁻²) of global light at the bag
 * @param responseMinutes tau, minutes
 * @param nightCooling how much cooler the air of the bag is than that of the house at night, K
 * @param filmCooling how much cooler the film is than the air of the bag at night, K
 * @param temperatureRest what the balance leaves unexplained in temperature, standard deviation, K
 * @param humidityRest the same in humidity, %RH
 * @param sensoredBags from how many bags with a lent sensor it was learnt; 0 for a prior
 */
public record BagBelief(
        Spread closureByDay,
        Spread closureByNight,
        Spread sunGain,
        Spread responseMinutes,
        Spread nightCooling,
        Spread filmCooling,
        double temperatureRest,
        double humidityRest,
        int sensoredBags) {
    /** Bag air against house air at night: as warm as the house, within 1 K. A prior. */
    static final Spread NIGHT_COOLING = new Spread(0, 1.0);

    /**
     * Film against bag air at night, K: radiation to a cover 3 K colder with a view of 0.3 gives 0.68 K at 15 °C (film
     * emissivity 0.85, 6 W m⁻² K⁻¹). Without an outdoor sensor a clear night cannot be told from a dull one, so one mean
     * stands for all. A prior.
     */
    static final Spread FILM_COOLING = new Spread(0.7, 0.4);

    /** Unexplained temperature before anything was measured, K. A prior. */
    static final double TEMPERATURE_REST = 0.7;

    /** Unexplained humidity before anything was measured, %RH. A prior. */
    static final double HUMIDITY_REST = 3;

    /** What is believed of a bag of a material before anything was measured. */
    public static BagBelief prior(BagMaterial material) {
        return new BagBelief(
                material.closureByDay(),
                material.closureByNight(),
                material.sunGain(),
                material.responseMinutes(),
                NIGHT_COOLING,
                FILM_COOLING,
                TEMPERATURE_REST,
                HUMIDITY_REST,
                0);
    }
}
