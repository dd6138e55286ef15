package bagward.mould;

import java.util.Locale;

/** Sentences with numbers, the same in every locale. */
final class Say {
    private Say() {}

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** How long it takes to a high risk, where that is not simply what is needed. */
    static String forHigh(double hours, BandLimits bands) {
        return bands.high() == 1 || !bands.canBeHigh() ? "" : format(", %.1f h for a high risk", hours);
    }

    static String wet(double hours, double celsius) {
        return format("wet %.1f h at %.0f °C", hours, celsius);
    }
}
