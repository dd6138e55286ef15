package bagward.bag;

/** What the fingertip showed; not scored is missing, never NONE. */
public enum PollenScore {
    /** 0: nothing. */
    NONE,
    /** 1: a trace. */
    TRACE,
    /** 2: clearly there. */
    CLEAR,
    /** 3: plenty. */
    PLENTIFUL
}
