package bagward.mould;

/**
 * Something about a pollination that the seed lot should remember.
 *
 * @param kind what it is about
 * @param hours how long, h
 * @param unknownHours time without data in the same span, h
 * @param text one sentence for a person
 */
public record PollinationNote(Kind kind, double hours, double unknownHours, String text) {
    /** What a note is about. */
    public enum Kind {
        /** Water on stigmas soon after pollination: fewer seeds. */
        SEED_SET,
        /** Humid air weakened self-incompatibility: unwanted selfs in a cross. */
        PURITY
    }
}
