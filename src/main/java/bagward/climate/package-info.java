/** Moist air, light, sun, readings and regular series. Pure: no clock, no input or output. */
package bagward.climate;
