package bagward.demo;

import bagward.demo.physics.BagAir;
import bagward.demo.physics.HouseAir;

/**
 * What a sensor could feel at its place.
 *
 * @param celsius air temperature, °C
 * @param percent relative humidity, %RH; above 100 in fog
 * @param globalLight solar radiation, W m⁻²
 */
record AirSample(double celsius, double percent, double globalLight) {
    static AirSample of(HouseAir air) {
        return new AirSample(air.celsius(), air.percent(), air.globalLight());
    }

    static AirSample of(BagAir air) {
        return new AirSample(air.celsius(), air.percent(), 0);
    }
}
