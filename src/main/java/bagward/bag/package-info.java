/** Heads, pollinations, baggings, the register and its rules, and the climate inside a bag. Pure. */
package bagward.bag;
