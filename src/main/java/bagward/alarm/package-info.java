/** Rules, the life cycle of alarms, and action cards. Pure: time is a parameter. */
package bagward.alarm;
