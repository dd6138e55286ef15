/**
 * Sparkplug B 3.0 (Eclipse Foundation) as far as a listener needs it: topics, payloads, births with their aliases, deaths,
 * sequence numbers. Knows nothing of sensors.
 */
package bagward.collector.sparkplug;
