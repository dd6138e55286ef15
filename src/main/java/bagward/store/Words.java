package bagward.store;

import java.util.Locale;

/** Enum constants as words in documents: lower case, with '-'. */
final class Words {
    private Words() {}

    /** The word of a constant. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The constant of a word. */
    static <E extends Enum<E>> E find(Class<E> type, String word) {
        for (E constant : type.getEnumConstants()) {
            if (of(constant).equals(word)) {
                return constant;
            }
        }
        throw new StoreException(
                "the store holds the unknown word '" + word + "': use the newer Bagward that wrote it");
    }
}
