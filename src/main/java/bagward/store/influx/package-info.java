/** The readings in InfluxDB, over the endpoints that its versions 1.x, 2.x and 3 have in common. */
package bagward.store.influx;
