package bagward.bag;

import bagward.fault.ImpossibleValueException;

/** What the fingertip showed; not scored is missing, never NONE. */
public enum PollenScore {
    /** 0: nothing. */
    NONE(0),
    /** 1: a trace. */
    TRACE(1),
    /** 2: clearly there. */
    CLEAR(2),
    /** 3: plenty. */
    PLENTIFUL(3);

    private final int number;

    PollenScore(int number) {
        this.number = number;
    }

    /** The score as a number, 0 to 3. */
    public int number() {
        return number;
    }

    /**
     * The score of a number.
     *
     * @throws ImpossibleValueException if it is not 0 to 3
     */
    public static PollenScore of(int number) {
        for (PollenScore score : values()) {
            if (score.number == number) {
                return score;
            }
        }
        throw new ImpossibleValueException("pollen score " + number + " is impossible: allowed are 0, 1, 2 and 3");
    }
}
