package bagward.bag;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word that was probably meant. */
final class Nearest {
    /** More than this share of wrong letters is another word. */
    private static final double FARTHEST = 0.5;

    private Nearest() {}

    /** A sentence that names the nearest known word, or all of them if none is near. */
    static String remedy(String word, Collection<String> known) {
        return nearest(word, known)
                .map(near -> "Did you mean '" + near + "'?")
                .orElseGet(() -> "Known are: " + String.join(", ", known) + ".");
    }

    private static Optional<String> nearest(String word, Collection<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return known.stream()
                .filter(k -> distance.apply(word, k) <= FARTHEST * Math.max(word.length(), k.length()))
                .min(Comparator.<String>comparingInt(k -> distance.apply(word, k))
                        .thenComparing(Comparator.naturalOrder()));
    }
}
