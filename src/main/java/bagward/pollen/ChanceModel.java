package bagward.pollen;

/** Gives the chance of clear or plentiful pollen for a light sum. */
public interface ChanceModel {
    /**
     * The chance at a time of day.
     *
     * @param moles light from sunrise to that time, mol m⁻² in the house
     */
    Chance at(double moles);
}
