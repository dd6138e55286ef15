package bagward.pollen;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.Optional;

/**
 * A pollen score that counts.
 *
 * @param house where it was taken
 * @param line the line whose pollen it is; empty for the house as a whole
 * @param at when it was taken
 * @param by who took it
 * @param score what the fingertip showed
 * @param withPollination whether it was taken with a pollination and stands in the register
 */
public record TakenScore(
        HouseId house, Optional<Line> line, Instant at, String by, PollenScore score, boolean withPollination) {
    /** The score as a number, 0 to 3. */
    public int number() {
        return score.number();
    }

    /** Whether there was clear or plentiful pollen: enough to work with. */
    public boolean enough() {
        return score.compareTo(PollenScore.CLEAR) >= 0;
    }
}
