package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.time.Instant;

/**
 * Two points of a check of a humidity sensor over saturated salts.
 *
 * @param sensor the sensor that was checked
 * @param checkedAt when; the correction holds from then on
 * @param low the point over the drier salt
 * @param high the point over the damper one
 */
public record SaltCheck(SensorId sensor, Instant checkedAt, Point low, Point high) {
    /** Points closer together than this say too little about the slope, %RH; ours. */
    private static final double LEAST_DISTANCE = 15;
    /** A sensor that is further off than this wants renewing, not correcting, %RH; ours. */
    private static final double LARGEST_ERROR = 15;

    /** Refuses points too close together, and a sensor that is beyond correcting. */
    public SaltCheck {
        double distance = high.truth() - low.truth();
        if (distance < LEAST_DISTANCE) {
            throw new ImpossibleValueException("salts " + low.salt().word() + " and "
                    + high.salt().word() + " lie " + distance + " %RH apart: give the drier first, and at least "
                    + LEAST_DISTANCE + " %RH between them");
        }
        for (Point point : new Point[] {low, high}) {
            if (Math.abs(point.error()) > LARGEST_ERROR) {
                throw new ImpossibleValueException("sensor " + sensor + " read " + point.read() + " %RH over "
                        + point.salt().word() + ", which keeps " + point.truth() + " %RH: more than " + LARGEST_ERROR
                        + " %RH off is a fault, not an error to correct. Wait longer, or renew the sensor");
            }
        }
    }

    /** The correction that follows: RH = s1 + (r − r1)(s2 − s1)/(r2 − r1), s the salts and r what the sensor read. */
    public HumidityCorrection correction() {
        double gain = (high.truth() - low.truth()) / (high.read() - low.read());
        return new HumidityCorrection(sensor, checkedAt, gain, low.truth() - gain * low.read());
    }

    /**
     * A sensor over one salt, after it has come to rest.
     *
     * @param salt the salt, as a slush with crystals and liquid
     * @param solution temperature of salt, air and sensor
     * @param sensorReading what the sensor read
     */
    public record Point(SaturatedSalt salt, Celsius solution, RelativeHumidity sensorReading) {
        /** What the air really had, %RH. */
        public double truth() {
            return salt.humidity(solution).percent();
        }

        /** What the sensor read, %RH. */
        public double read() {
            return sensorReading.percent();
        }

        /** What the sensor reads too much, %RH; negative if too little. */
        public double error() {
            return read() - truth();
        }
    }
}
