/** Configuration, wiring and command line. */
package bagward.app;
