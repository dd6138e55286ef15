package bagward.bag;

/**
 * How far a sensor may be off: standard deviations of its whole error (offset and noise).
 *
 * @param temperature K
 * @param humidity %RH
 */
public record SensorError(double temperature, double humidity) {
    /**
     * A usual capacitive sensor in a greenhouse: 0.3 K; 1.5 %RH offset and 1 %RH noise together 1.8 %RH. A prior, of the
     * size that makers of such parts state below 90 %RH; above it they are worse, see {@link #humidityAt}.
     */
    public static final SensorError USUAL = new SensorError(0.3, 1.8);

    /** Above this humidity, %RH, the error grows. */
    private static final double DAMP = 90;

    /** Growth of the error per %RH above {@link #DAMP}: doubled at saturation (makers' engineers, no data sheet). */
    private static final double GROWTH = 0.1;

    /** Standard deviation at a humidity, both in %RH. */
    public double humidityAt(double percent) {
        return percent <= DAMP ? humidity : humidity * (1 + GROWTH * (percent - DAMP));
    }
}
