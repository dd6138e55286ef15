package bagward.demo.physics;

/**
 * What a bag of the demo and the head in it are like.
 *
 * @param filmArea both sides counted once, m²
 * @param volume m³
 * @param openness exchange through holes and neck in still air, m³ s⁻¹
 * @param opennessPerWind more exchange for each m s⁻¹ of air speed, m³ s⁻¹ per m s⁻¹
 * @param transmits share of the light that passes the film, 0 to 1
 * @param absorbs share of the light that warms the film, 0 to 1
 * @param headArea surface of buds, stalks and leaves inside, m²
 * @param headKilograms mass of the head, kg
 */
public record BagDesign(
        double filmArea,
        double volume,
        double openness,
        double opennessPerWind,
        double transmits,
        double absorbs,
        double headArea,
        double headKilograms) {

    /** The bag once it has slid down: little is left open, the film lies on the head in folds, and drops shade it. */
    BagDesign shut() {
        return new BagDesign(
                0.6 * filmArea,
                0.4 * volume,
                0.05 * openness,
                0.05 * opennessPerWind,
                0.6 * transmits,
                absorbs,
                headArea,
                headKilograms);
    }
}
