/** Messages to people: who is told, when, and what was told already. Pure: time is a parameter. */
package bagward.message;
