/** What the bytes of a message mean: a pure function of payload, configuration and time of arrival. */
package bagward.collector.payload;
