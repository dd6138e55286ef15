package bagward.site.page;

/**
 * Cautions, words and licences.
 *
 * @param zone zone of all times on pages
 */
public record AboutPage(String zone) {}
