package bagward.bag;

import bagward.fault.ImpossibleValueException;

/**
 * A genotype kept by the breeder.
 *
 * @param name as on the label, 1 to 60 characters, not blank
 */
public record Line(String name) {
    /** Refuses blank and over-long names. */
    public Line {
        if (name.isBlank() || name.length() > 60) {
            throw new ImpossibleValueException(
                    "line name '" + name + "' is not allowed: 1 to 60 characters, not blank");
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
