/** From MQTT messages to stored readings: broker, payloads, checks, quarantine. */
package bagward.collector;
