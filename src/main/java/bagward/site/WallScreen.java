package bagward.site;

import bagward.units.Checks;
import java.util.Locale;

/**
 * The wall screen, from which the sizes of its letters follow.
 *
 * @param readingDistanceMetres from which the list of things to do must be readable, m
 * @param diagonalInches of the 16:9 screen, inches
 */
public record WallScreen(double readingDistanceMetres, double diagonalInches) {
    /** A 55 inch screen that is read from 5 m. */
    public static final WallScreen USUAL = new WallScreen(5, 55);

    /** Preferred height of a capital letter, minutes of arc (public summaries of ISO 9241-303: 20 to 22). */
    private static final double LETTER_ARC_MINUTES = 20;

    /** Height of a capital letter for each unit of font size (our measure of common sans-serif fonts). */
    private static final double CAPITAL_SHARE = 0.7;

    private static final double MILLIMETRES_PER_INCH = 25.4;

    /** Refuses rooms and screens that are none. */
    public WallScreen {
        Checks.within("reading distance of the wall screen", readingDistanceMetres, 0.5, 20, "m");
        Checks.within("diagonal of the wall screen", diagonalInches, 7, 150, "in");
    }

    /** Font size that reads well from the distance, per cent of the height of the screen; 3 to 7.5 so that lines fit. */
    public double farPercent() {
        double capital = 2 * readingDistanceMetres * 1000 * Math.tan(Math.toRadians(LETTER_ARC_MINUTES / 60 / 2));
        double height = diagonalInches * MILLIMETRES_PER_INCH * 9 / Math.sqrt(16 * 16 + 9 * 9);
        double percent = 100 * capital / CAPITAL_SHARE / height;
        return Math.max(3, Math.min(7.5, percent));
    }

    /** The sizes as a style sheet. */
    String styleSheet() {
        return String.format(Locale.ROOT, ":root{--far:%.2fvh;--mid:%.2fvh}%n", farPercent(), farPercent() * 0.58);
    }
}
