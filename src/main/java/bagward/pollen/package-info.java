/** Pollen scores against light: rank correlation, ordinal regression, intervals, and how good past outlooks were. Pure. */
package bagward.pollen;
