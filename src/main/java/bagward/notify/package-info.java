/** Delivers what waits in the outbox: mail, webhooks, MQTT; heartbeat and calendar. */
package bagward.notify;
