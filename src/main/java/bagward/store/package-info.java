/** What is kept on disk: readings, quarantine, register changes, alarms, messages on their way. */
package bagward.store;
