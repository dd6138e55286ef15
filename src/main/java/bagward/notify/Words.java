package bagward.notify;

import java.util.Locale;

/** Enum constants as words that leave the program: lower case, with '-'. */
final class Words {
    private Words() {}

    /** The word of a constant. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
