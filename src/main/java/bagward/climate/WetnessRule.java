package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Checks;

/**
 * When a surface counts as wet, told from the air.
 *
 * <p>Both rules have a limit to become wet and another to become dry again, because 90 and 93 %RH cannot be told apart
 * by a cheap sensor: an error of 3 %RH moves the dew point by about 0.5 °C. Between the two limits the state before
 * stays. After a gap, a value between them leaves the state unknown until a limit is passed.
 */
public sealed interface WetnessRule {
    /** What counts before the first cell, and after a gap, while the air is between the two limits. */
    enum Before {
        /** It was dry. */
        DRY,
        /** It was wet. */
        WET,
        /** Nobody knows. */
        UNKNOWN
    }

    /** How wet the air is in the eyes of a rule: 1 wet, 0 dry, −1 between the limits; NaN counts as between. */
    int judge(double celsius, double percent);

    /**
     * Wetness from a climate whose state before it is unknown.
     *
     * @param temperature air temperature, °C
     * @param humidity relative humidity on the same grid, %RH
     */
    default Wetness wetness(RegularSeries temperature, RegularSeries humidity) {
        return wetness(temperature, humidity, Before.UNKNOWN);
    }

    /**
     * Wetness from a climate.
     *
     * @param temperature air temperature, °C
     * @param humidity relative humidity on the same grid, %RH
     * @param before state before the first cell
     */
    default Wetness wetness(RegularSeries temperature, RegularSeries humidity, Before before) {
        double[] states = new double[temperature.grid().size()];
        double state = before == Before.UNKNOWN ? Double.NaN : before == Before.WET ? 1 : 0;
        for (int i = 0; i < states.length; i++) {
            int judged = judge(temperature.valueOrNaN(i), humidity.valueOrNaN(i));
            boolean gap = !temperature.known(i) || !humidity.known(i);
            state = gap ? Double.NaN : judged < 0 ? state : judged;
            states[i] = state;
        }
        return new Wetness(RegularSeries.of(temperature.grid(), states));
    }

    /**
     * Wet from a relative humidity on. Sentelhas et al. 2008 (Agric. For. Meteorol. 148:392) found a constant 90 %RH
     * right in 87 to 92 % of hours with the fewest false alarms of the rules they compared.
     *
     * @param wetFrom %RH at which it becomes wet
     * @param dryBelow %RH below which it becomes dry, at most wetFrom
     */
    record HumidityLimit(double wetFrom, double dryBelow) implements WetnessRule {
        /** 90 %RH, dry again below 88: the limit is published, the two points between are ours. */
        public static final HumidityLimit USUAL = new HumidityLimit(90, 88);

        /** Refuses limits out of order. */
        public HumidityLimit {
            Checks.within("limit of wetness", wetFrom, 0, 100, "%RH");
            Checks.within("limit of dryness", dryBelow, 0, 100, "%RH");
            if (dryBelow > wetFrom) {
                throw new ImpossibleValueException("dry below " + dryBelow + " %RH and wet from " + wetFrom
                        + " %RH overlap: dry must end at or below the start of wet");
            }
        }

        @Override
        public int judge(double celsius, double percent) {
            if (percent >= wetFrom) {
                return 1;
            }
            return percent < dryBelow ? 0 : -1;
        }
    }

    /**
     * Wet while the air is near its dew point. The limits of Gillespie, Srivastava and Pitblado 1993 are 2.0 and 3.8 °C
     * (from memory, not read in the paper); at 20 °C they stand for 88.3 and 78.8 %RH.
     *
     * @param wetUpTo dew-point depression at which it becomes wet, °C
     * @param dryFrom dew-point depression at which it becomes dry, °C, at least wetUpTo
     */
    record DewPointDepression(double wetUpTo, double dryFrom) implements WetnessRule {
        /** 2.0 and 3.8 °C. */
        public static final DewPointDepression USUAL = new DewPointDepression(2.0, 3.8);

        /** Refuses limits out of order. */
        public DewPointDepression {
            Checks.within("limit of wetness", wetUpTo, 0, 50, "°C");
            Checks.within("limit of dryness", dryFrom, 0, 50, "°C");
            if (dryFrom < wetUpTo) {
                throw new ImpossibleValueException("wet up to " + wetUpTo + " °C and dry from " + dryFrom
                        + " °C overlap: dry must begin at or above the end of wet");
            }
        }

        @Override
        public int judge(double celsius, double percent) {
            double depression = MoistAir.dewPointDepressionDegrees(celsius, percent);
            if (depression <= wetUpTo) {
                return 1;
            }
            return depression >= dryFrom ? 0 : -1;
        }
    }
}
