/** Measured values as small types that carry their unit and refuse NaN and nonsense. */
package bagward.units;
