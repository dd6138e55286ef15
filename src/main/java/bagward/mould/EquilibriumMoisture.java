package bagward.mould;

import bagward.fault.ImpossibleValueException;
import bagward.units.SeedMoisture;
import java.util.Optional;

/**
 * The moisture at which seed comes to rest in air: 1 − R = exp(−[Me (1.1 + T/90) / (1 − Do)]² / 440), with Me in % of the dry
 * seed, R the relative humidity as a ratio, T in °C and Do the share of oil in the dry seed (Cromarty, Ellis & Roberts
 * 1982, The design of seed storage facilities for genetic conservation, as read by others). For oily seed it holds from
 * 15 to 25 °C and from 10 to 70 %RH.
 *
 * <p>Outside that range no number is made up. What is said there is a bound, since seed holds more water in damper and in
 * colder air (from memory): in air of more than 70 %RH more than at 70 %RH, and so on. Seed that dries holds somewhat more
 * than seed that takes up water from the same air, and seed in pods takes days to come to rest; neither is in the equation.
 */
public final class EquilibriumMoisture {
    private static final double LOWEST_CELSIUS = 15;
    private static final double HIGHEST_CELSIUS = 25;
    private static final double LOWEST_PERCENT = 10;
    private static final double HIGHEST_PERCENT = 70;

    private EquilibriumMoisture() {}

    /** Whether the equation holds in such air. */
    public static boolean holds(double celsius, double percent) {
        return celsius >= LOWEST_CELSIUS
                && celsius <= HIGHEST_CELSIUS
                && percent >= LOWEST_PERCENT
                && percent <= HIGHEST_PERCENT;
    }

    /**
     * The moisture by the equation.
     *
     * @param celsius of the air, °C, 15 to 25
     * @param percent of the air, %RH, 10 to 70
     * @param oilShare oil in the dry seed, 0 to 0.7
     * @throws ImpossibleValueException outside the range of the equation
     */
    public static SeedMoisture of(double celsius, double percent, double oilShare) {
        if (!holds(celsius, percent)) {
            throw new ImpossibleValueException("seed moisture in air of " + celsius + " °C and " + percent
                    + " %RH is not known: the equation holds from 15 to 25 °C and 10 to 70 %RH");
        }
        double drive = Math.sqrt(-440 * Math.log(1 - percent / 100));
        return SeedMoisture.ofDryBasis(drive * (1 - oilShare) / (1.1 + celsius / 90));
    }

    /** What can be said of seed with an oil share that is not known exactly; the much oil, the less water. */
    public static MoistureRange range(double celsius, double percent, OilShare oil) {
        double nearCelsius = Math.min(HIGHEST_CELSIUS, Math.max(LOWEST_CELSIUS, celsius));
        double nearPercent = Math.min(HIGHEST_PERCENT, Math.max(LOWEST_PERCENT, percent));
        boolean bounded = celsius <= HIGHEST_CELSIUS && percent >= LOWEST_PERCENT;
        boolean limited = celsius >= LOWEST_CELSIUS && percent <= HIGHEST_PERCENT;
        return new MoistureRange(
                when(bounded, nearCelsius, nearPercent, oil.high()),
                when(bounded && limited, nearCelsius, nearPercent, oil.middle()),
                when(limited, nearCelsius, nearPercent, oil.low()));
    }

    private static Optional<SeedMoisture> when(boolean known, double celsius, double percent, double oilShare) {
        return known ? Optional.of(of(celsius, percent, oilShare)) : Optional.empty();
    }
}
