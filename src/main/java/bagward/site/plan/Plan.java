package bagward.site.plan;

import bagward.bag.TagCode;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.site.view.Standing;
import bagward.site.view.Words;
import bagward.station.Bay;
import bagward.station.House;
import bagward.station.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The bench plan of a board on a sheet.
 *
 * @param width units
 * @param height units
 * @param houses the houses
 * @param summary the plan in one sentence
 */
public record Plan(double width, double height, List<PlanHouse> houses, String summary) {
    /** Copies the list. */
    public Plan {
        houses = List.copyOf(houses);
    }

    /** Draws a board on a sheet, as large as it fits. */
    public static Plan of(Board board, Sheet sheet) {
        List<House> houses = board.houses().stream().map(HouseView::house).toList();
        Measures measures = Arrangement.best(houses, sheet);
        Map<Spot, BagView> bags = new HashMap<>();
        board.bags().forEach(b -> bags.put(b.head().spot(), b));
        return new Drawing(board, measures, bags).plan();
    }

    /** How many bags stand in a way. */
    public static long count(Board board, Standing standing) {
        return board.bags().stream()
                .filter(b -> Glyphs.of(board, b).standing() == standing)
                .count();
    }

    /** Glyph of a bag, for pages that show one alone. */
    public static Optional<Glyph> glyph(Board board, TagCode tag) {
        return board.find(tag).map(b -> Glyphs.of(board, b));
    }

    private record Drawing(Board board, Measures measures, Map<Spot, BagView> bags) {
        Plan plan() {
            List<PlanHouse> drawn = new ArrayList<>();
            double y = 0;
            List<House> all = board.houses().stream().map(HouseView::house).toList();
            double left = Math.max(0, (measures.sheet().width() - measures.width(all)) / 2);
            for (List<HouseView> row : Measures.rowsOf(board.houses(), measures.housesAbreast())) {
                double x = left;
                double height = 0;
                for (HouseView house : row) {
                    double width = measures.houseWidth(house.house());
                    height = Math.max(height, measures.houseHeight(house.house()));
                    drawn.add(house(house, x, y));
                    x += width + measures.aisle();
                }
                y += height + measures.aisle();
            }
            double height = Double.isInfinite(measures.sheet().height())
                    ? y
                    : Math.max(y, measures.sheet().height());
            return new Plan(measures.sheet().width(), height, drawn, summary());
        }

        private String summary() {
            long act = Plan.count(board, Standing.ACT);
            long abnormal = Plan.count(board, Standing.ABNORMAL);
            long note = Plan.count(board, Standing.NOTE);
            return "Bench plan: " + Words.count(board.bags().size(), "bag on", "bags on") + ", " + act + " act now, "
                    + abnormal + " today, " + note + " when you come by.";
        }

        private PlanHouse house(HouseView view, double x, double y) {
            House house = view.house();
            double head = measures.sheet().head();
            Box outline = new Box(x, y + head, measures.houseWidth(house), measures.houseHeight(house) - head);
            List<PlanBay> bays = new ArrayList<>();
            double top = outline.y() + measures.aisle();
            for (List<Bay> row : Measures.rowsOf(house.bays(), measures.baysAbreast())) {
                double widths = row.stream().mapToDouble(measures::bayWidth).sum();
                double space = (outline.width() - widths) / (row.size() + 1);
                double left = x + space;
                double tallest = measures.tallest(row);
                for (Bay bay : row) {
                    bays.add(bay(house, bay, left, top + tallest - measures.bayHeight(bay)));
                    left += measures.bayWidth(bay) + space;
                }
                top += tallest + measures.aisle();
            }
            return PlanHouse.of(view, outline, new Box(x, y, outline.width(), head), bays);
        }

        private PlanBay bay(House house, Bay bay, double x, double y) {
            int rows = Measures.rows(bay);
            double spot = measures.spot();
            Box top = new Box(x + measures.ruler(), y, bay.across() * spot, rows * measures.spotHeight());
            List<PlanBay.Tick> ruler = new ArrayList<>();
            List<PlanSpot> spots = new ArrayList<>();
            for (int number = 1; number <= bay.spots(); number++) {
                int row = (number - 1) / bay.across();
                int column = (number - 1) % bay.across();
                double cellY = top.bottom() - (row + 1) * measures.spotHeight();
                if (column == 0) {
                    double baseline = cellY + (measures.spotHeight() - spot * Measures.LEAST_TALL) / 2 + spot * 0.66;
                    ruler.add(new PlanBay.Tick(Integer.toString(number), top.x() - spot * 0.1, baseline, spot * 0.24));
                }
                Optional<Glyph> glyph = Optional.ofNullable(bags.get(new Spot(house.id(), bay.id(), number)))
                        .map(b -> Glyphs.of(board, b));
                spots.add(new PlanSpot(
                        number,
                        top.x() + column * spot,
                        cellY + (measures.spotHeight() - spot * Measures.LEAST_TALL) / 2,
                        spot / 100,
                        glyph));
            }
            double size = measures.sheet().label() * 0.72;
            return new PlanBay(bay.name(), top, top.bottom() + size * 1.15, size, ruler, spots);
        }
    }
}
