package bagward.site.view;

/**
 * One line of a sheet.
 *
 * @param name what it tells
 * @param value the value in words
 */
public record Fact(String name, String value) {}
