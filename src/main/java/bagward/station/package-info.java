/** The station as it is configured: houses, bays, spots and sensors. */
package bagward.station;
