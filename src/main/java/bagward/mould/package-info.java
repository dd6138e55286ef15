/** Organisms, wet spells, infection and the mould index. Pure. */
package bagward.mould;
