package bagward.site.plan;

import bagward.station.Bay;
import bagward.station.House;
import java.util.ArrayList;
import java.util.List;

/**
 * Sizes of bays and houses for one width of a spot.
 *
 * @param sheet the paper
 * @param spot width of a spot, units
 * @param baysAbreast how many bays stand side by side in a house
 * @param housesAbreast how many houses stand side by side
 */
record Measures(Sheet sheet, double spot, int baysAbreast, int housesAbreast) {
    /** Height of a spot for each unit of its width. */
    static final double TALL = 1.26;

    /** Room for the numbers at the left of a bench, for each unit of a spot. */
    private static final double RULER = 0.42;

    double aisle() {
        return Math.max(10, spot * 0.28);
    }

    double ruler() {
        return spot * RULER;
    }

    double spotHeight() {
        return spot * TALL;
    }

    static int rows(Bay bay) {
        return (bay.spots() + bay.across() - 1) / bay.across();
    }

    double bayWidth(Bay bay) {
        return ruler() + bay.across() * spot;
    }

    double bayHeight(Bay bay) {
        return rows(bay) * spotHeight() + sheet.label();
    }

    double houseWidth(House house) {
        double widest = rowsOf(house.bays(), baysAbreast).stream()
                .mapToDouble(row -> row.stream().mapToDouble(this::bayWidth).sum() + aisle() * (row.size() + 1))
                .max()
                .orElse(0);
        return Math.max(widest, sheet.head() * 3.6);
    }

    double houseHeight(House house) {
        double bays = rowsOf(house.bays(), baysAbreast).stream()
                .mapToDouble(row -> tallest(row) + aisle())
                .sum();
        return sheet.head() + bays + aisle();
    }

    double tallest(List<Bay> row) {
        return row.stream().mapToDouble(this::bayHeight).max().orElse(0);
    }

    double width(List<House> houses) {
        return rowsOf(houses, housesAbreast).stream()
                .mapToDouble(row -> row.stream().mapToDouble(this::houseWidth).sum() + aisle() * (row.size() - 1))
                .max()
                .orElse(0);
    }

    double height(List<House> houses) {
        return rowsOf(houses, housesAbreast).stream()
                .mapToDouble(
                        row -> row.stream().mapToDouble(this::houseHeight).max().orElse(0) + aisle())
                .sum();
    }

    boolean fits(List<House> houses) {
        return width(houses) <= sheet.width() && height(houses) <= sheet.height();
    }

    static <T> List<List<T>> rowsOf(List<T> things, int abreast) {
        List<List<T>> rows = new ArrayList<>();
        for (int i = 0; i < things.size(); i += abreast) {
            rows.add(things.subList(i, Math.min(things.size(), i + abreast)));
        }
        return rows;
    }
}
