/** The running watch: holds register and readings, makes the board each tick, takes what people enter. */
package bagward.watch;
