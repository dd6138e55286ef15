/**
 * The physics of the demo: weather, two glasshouses and what goes on inside a bag.
 *
 * <p>It shares no equation with the estimate of the bag climate, so that the demo shows an estimate that can be wrong.
 * Dimensions and coefficients are plausible values chosen for the demo (common practice, no source) unless a source
 * stands beside them. Energy is counted in watts for each square metre of floor in a house, and in watts in a bag.
 */
package bagward.demo.physics;
