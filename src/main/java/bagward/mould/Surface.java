package bagward.mould;

import bagward.fault.ImpossibleValueException;

/**
 * What mould grows on.
 *
 * @param substrate the row of the mould index that stands for it
 * @param source why this row, or that it is a prior
 */
public record Surface(Substrate substrate, String source) {
    /** Refuses a row without its source. */
    public Surface {
        if (source.isBlank()) {
            throw new ImpossibleValueException("a surface lacks its source: give it, or 'prior'");
        }
    }
}
