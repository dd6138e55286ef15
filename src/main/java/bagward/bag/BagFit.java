package bagward.bag;

import java.time.Instant;

/**
 * How a sensored bag sits, judged by what it does to the vapour.
 *
 * @param verdict the judgement
 * @param at the end of the hours it was judged by
 * @param since since when it has sat so without a break, as far as is known
 * @param closure closure over those hours; NaN if it cannot be told
 * @param expected what is believed of this bag at that time of day, with its doubt and that of the sensors
 * @param because one sentence with the numbers
 */
public record BagFit(Verdict verdict, Instant at, Instant since, double closure, Spread expected, String because) {
    /** How it sits. */
    public enum Verdict {
        /** As it should. */
        FITS,
        /** Fallen shut or together: it holds far more vapour back than it did. */
        SHUT,
        /** Blown off or torn: it holds hardly any vapour back and does not warm in the sun. */
        OFF,
        /** Not to be told: not heard, or the air too near saturation. */
        UNKNOWN
    }
}
