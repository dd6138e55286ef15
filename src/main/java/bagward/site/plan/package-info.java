/** The bench plan: houses, bays and spots seen from above, with each bag drawn where it hangs. */
package bagward.site.plan;
