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
 * @param tall height of a spot for each unit of its width
 * @param baysAbreast how many bays stand side by side in a house
 * @param housesAbreast how many houses stand side by side
 */
record Measures(Sheet sheet, double spot, double tall, int baysAbreast, int housesAbreast) {
    /** Least height of a spot for each unit of its width: bag and value below each other. */
    static final double LEAST_TALL = 1.26;

    /** Most height of a spot for each unit of its width; more would tear the rows apart. */
    static final double MOST_TALL = 1.8;

    /** Least width of a house for each unit of its head: room for three figures and their lines. */
    private static final double HEAD_WIDTH = 4.5;

    /** Room for the numbers at the left of a bench, for each unit of a spot. */
    private static final double RULER = 0.42;

    double aisle() {
        return Math.max(10, spot * 0.28);
    }

    double ruler() {
        return spot * RULER;
    }

    double spotHeight() {
        return spot * tall;
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
        return Math.max(widest, sheet.head() * HEAD_WIDTH);
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

    /** The same with rows drawn as far apart as the height of the sheet allows. */
    Measures stretched(List<House> houses) {
        Measures stretched = this;
        for (double more = tall; more <= MOST_TALL && Double.isFinite(sheet.height()); more += 0.02) {
            Measures taller = new Measures(sheet, spot, more, baysAbreast, housesAbreast);
            if (taller.fits(houses)) {
                stretched = taller;
            }
        }
        return stretched;
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
