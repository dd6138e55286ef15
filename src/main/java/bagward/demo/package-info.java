/** The demo: an invented station whose climate is simulated by physics of its own and sent over MQTT. */
package bagward.demo;
