/** Pages, JSON interface and live updates. */
package bagward.site;
