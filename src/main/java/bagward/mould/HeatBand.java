package bagward.mould;

/** What the heat in a bag means, mildest first. */
public enum HeatBand {
    /** Below every limit. */
    NONE,
    /** Warm enough to keep an eye on. */
    WATCH,
    /** Hot for hours: fewer pods and seeds are to be expected. */
    HEAT,
    /** So hot that pollen is likely lost. */
    POLLEN_LOSS
}
