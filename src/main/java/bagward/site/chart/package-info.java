/** Charts as SVG path data: lines that break at gaps, bands, limits, nights. */
package bagward.site.chart;
