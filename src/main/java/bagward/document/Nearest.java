package bagward.document;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what a misspelt word was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /**
     * The nearest of the known words, if it is near: at most two letters, and less than half of the word, differ.
     *
     * @param word as it was written
     * @param known the words that are allowed
     */
    public static Optional<String> of(String word, Collection<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        String lower = word.toLowerCase(Locale.ROOT);
        return known.stream()
                .min(Comparator.comparingInt((String k) -> distance.apply(lower, k.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(k -> {
                    int differing = distance.apply(lower, k.toLowerCase(Locale.ROOT));
                    return differing <= 2 && differing * 2 < Math.max(2, word.length());
                });
    }
}
