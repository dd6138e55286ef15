package bagward.mould;

/** How an organism answers to the climate: by wet spells, or by an index that grows and shrinks hour by hour. */
public sealed interface MouldModel permits SpellModel, GrowthIndex {
    /** Limits of the score that this model comes with. */
    BandLimits usualBands();
}
