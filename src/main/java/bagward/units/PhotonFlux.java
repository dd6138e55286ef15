package bagward.units;

/**
 * Photosynthetic photon flux density, 400 to 700 nm (PPFD).
 *
 * @param micromoles µmol m⁻² s⁻¹, 0 to 3000 (above the atmosphere the sun gives about 2800)
 */
public record PhotonFlux(double micromoles) implements Comparable<PhotonFlux> {
    /** Refuses what is not finite or cannot be. */
    public PhotonFlux {
        Checks.within("photon flux", micromoles, 0, 3000, "µmol m⁻² s⁻¹");
    }

    @Override
    public int compareTo(PhotonFlux other) {
        return Double.compare(micromoles, other.micromoles);
    }
}
