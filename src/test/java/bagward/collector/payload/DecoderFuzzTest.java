package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged, random and cruel payloads: whatever comes, it is a reading or a reason, soon, and without much memory. */
class DecoderFuzzTest {
    private static final int INPUTS_PER_SEED = 50_000;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whatever_comes_is_a_reading_or_a_reason(long seed) {
        FuzzRun run = new FuzzRun();
        assertTimeoutPreemptively(Duration.ofMinutes(2), () -> run.run(seed, INPUTS_PER_SEED));
        assertTrue(run.readings() > INPUTS_PER_SEED / 20, run::toString);
        assertTrue(run.refused() > INPUTS_PER_SEED / 4, run::toString);
    }
}
