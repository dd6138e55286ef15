/** One immutable picture of the station a tick, shared by pages, interface and messages. Pure. */
package bagward.board;
