package bagward.bag;

import bagward.units.Checks;
import java.time.Instant;
import java.util.Optional;

/**
 * What was done to a head.
 *
 * @param at when
 * @param by who
 * @param kind self, sib or cross
 * @param budsOpened how many closed buds were opened and pollinated, 1 to 60 (up to about ten is common practice)
 * @param score pollen on the fingertip, if it was scored
 */
public record Pollination(Instant at, String by, PollinationKind kind, int budsOpened, Optional<PollenScore> score) {
    /** Refuses numbers of buds that no head has. */
    public Pollination {
        Checks.within("buds opened", budsOpened, 1, 60, "");
    }
}
