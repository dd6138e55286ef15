/** The small family of errors that every room uses: what was found, where, which rule it broke, and what helps. */
package bagward.fault;
