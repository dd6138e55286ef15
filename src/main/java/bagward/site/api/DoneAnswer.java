package bagward.site.api;

/**
 * What came of an act.
 *
 * @param done whether anything was changed; false if the alarm was over or confirmed already
 */
public record DoneAnswer(boolean done) {}
