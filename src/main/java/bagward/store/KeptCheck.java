package bagward.store;

import bagward.climate.SaltCheck;
import java.time.Instant;
import java.util.Optional;

/**
 * A check of a humidity sensor as it is kept.
 *
 * @param id its number
 * @param check what was found
 * @param by who entered it
 * @param recordedAt when it was entered
 * @param withdrawn why it no longer counts; empty while it does
 */
public record KeptCheck(long id, SaltCheck check, String by, Instant recordedAt, Optional<Withdrawal> withdrawn) {
    /**
     * The withdrawal of a check that was wrong.
     *
     * @param recordedAt when
     * @param by who withdrew it
     * @param why for what reason
     */
    public record Withdrawal(Instant recordedAt, String by, String why) {}
}
