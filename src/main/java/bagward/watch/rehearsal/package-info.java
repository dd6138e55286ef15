/** Alarm rules tried on the stored past, beside the running watch and without touching it. */
package bagward.watch.rehearsal;
