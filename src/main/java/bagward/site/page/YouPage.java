package bagward.site.page;

/**
 * The form for the name of who works at a device.
 *
 * @param name as typed or kept
 * @param fault what is wrong with it; empty if nothing
 */
public record YouPage(String name, String fault) {}
