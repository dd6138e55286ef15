package bagward.mould;

import bagward.fault.ImpossibleValueException;

/**
 * One row of the mould table.
 *
 * @param id short name in files, lower-case letters, digits and '-'
 * @param name as it stands in a sentence before "needs"
 * @param model how it answers to the climate
 * @param bands where its bands begin on the model's score
 * @param source where the parameters come from, or "prior" with what it was built from
 */
public record Organism(String id, String name, MouldModel model, BandLimits bands, String source) {
    /** Refuses a row without name or source. */
    public Organism {
        if (!id.matches("[a-z0-9][a-z0-9-]{0,47}")) {
            throw new ImpossibleValueException("organism '" + id
                    + "' is not allowed: lower-case letters, digits and '-', starting with a letter or digit");
        }
        if (name.isBlank() || source.isBlank()) {
            throw new ImpossibleValueException(
                    "organism '" + id + "' lacks its name or source: give both, or 'prior' as the source");
        }
    }
}
