/** A thread that does one thing again and again. */
package bagward.clockwork;
