package bagward.mould;

import java.util.Locale;

/** Sentences with numbers, the same in every locale. */
final class Say {
    private Say() {}

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    static String wet(double hours, double celsius) {
        return format("wet %.1f h at %.0f °C", hours, celsius);
    }
}
