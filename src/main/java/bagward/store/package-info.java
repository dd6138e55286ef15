/** What is kept on disk: readings, quarantine, register changes, alarms. */
package bagward.store;
