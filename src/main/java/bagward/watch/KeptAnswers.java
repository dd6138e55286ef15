package bagward.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Answers that cost some tenths of a second and may be a few minutes old: an open page asks anew with each board. Safe for
 * use by several threads; the same question is worked out once at a time.
 *
 * @param <T> an answer
 */
final class KeptAnswers<T> {
    private static final int MOST = 100;

    private final Duration fresh;
    private final Map<Object, Kept<T>> kept = new LinkedHashMap<>();

    /** @param fresh how old an answer may be */
    KeptAnswers(Duration fresh) {
        this.fresh = fresh;
    }

    /**
     * The answer to a question.
     *
     * @param question told from others by equality
     * @param now the time it is asked
     * @param work works it out
     */
    synchronized T answer(Object question, Instant now, Supplier<T> work) {
        Kept<T> known = kept.get(question);
        if (known != null && !now.isBefore(known.at) && now.isBefore(known.at.plus(fresh))) {
            return known.answer;
        }
        T answer = work.get();
        kept.remove(question);
        kept.put(question, new Kept<>(now, answer));
        if (kept.size() > MOST) {
            kept.remove(kept.keySet().iterator().next());
        }
        return answer;
    }

    private record Kept<T>(Instant at, T answer) {}
}
