package bagward.clockwork;

import java.time.Duration;

/**
 * How long a clockwork waits after a run.
 *
 * @param shortest before which it does not run even if it is asked; zero for at once
 * @param longest after which it runs without being asked; where it is less than the shortest, the shortest counts
 */
public record Pause(Duration shortest, Duration longest) {
    /** At most so long, and less if it is asked. */
    public static Pause atMost(Duration longest) {
        return new Pause(Duration.ZERO, longest);
    }

    /** What is left of a pause that counts from the start of a run, and at least as long as the run took. */
    Pause after(Duration took) {
        Duration rest = shortest.minus(took);
        return new Pause(rest.compareTo(took) > 0 ? rest : took, longest.minus(took));
    }
}
