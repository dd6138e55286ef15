package bagward.site.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.board.Board;
import bagward.board.HouseView;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTest {
    @Test
    void spot_one_lies_at_the_near_left_and_numbers_run_along_the_row() {
        Plan plan = Plan.of(board(List.of(house("a", new Bay(new BayId("b"), "B", 7, 3)))), Sheet.WALL);
        List<PlanSpot> spots = plan.houses().get(0).bays().get(0).spots();
        assertEquals(7, spots.size());
        assertEquals(spots.get(0).y(), spots.get(2).y());
        assertTrue(spots.get(1).x() > spots.get(0).x());
        assertTrue(spots.get(3).y() < spots.get(0).y(), "the second row lies farther from the door");
        assertEquals(spots.get(0).x(), spots.get(3).x());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void every_bench_lies_in_its_house_and_no_two_houses_overlap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<House> houses = new ArrayList<>();
        for (int h = 0; h < 1 + random.nextInt(5); h++) {
            Bay[] bays = new Bay[1 + random.nextInt(5)];
            for (int b = 0; b < bays.length; b++) {
                int across = 1 + random.nextInt(6);
                bays[b] = new Bay(new BayId("b" + b), "Bay " + b, across + random.nextInt(40), across);
            }
            houses.add(house("h" + h, bays));
        }
        for (Sheet sheet : List.of(Sheet.WALL, Sheet.DESK, Sheet.PHONE)) {
            check(Plan.of(board(houses), sheet), sheet, "seed " + seed + ", " + sheet);
        }
    }

    private static void check(Plan plan, Sheet sheet, String seed) {
        for (PlanHouse house : plan.houses()) {
            Box outline = house.outline();
            assertTrue(outline.right() <= sheet.width() + 0.01, seed + ": " + outline);
            assertTrue(outline.bottom() <= plan.height() + 0.01, seed + ": " + outline);
            for (PlanBay bay : house.bays()) {
                assertTrue(bay.top().x() >= outline.x() && bay.top().right() <= outline.right(), seed);
                assertTrue(bay.top().y() >= outline.y() && bay.top().bottom() <= outline.bottom(), seed);
            }
        }
        for (PlanHouse a : plan.houses()) {
            for (PlanHouse b : plan.houses()) {
                assertTrue(a.equals(b) || apart(a, b), seed + ": " + a.outline() + " " + b.outline());
            }
        }
    }

    private static boolean apart(PlanHouse a, PlanHouse b) {
        return a.outline().right() <= b.outline().x()
                || b.outline().right() <= a.outline().x()
                || a.outline().bottom() <= b.head().y()
                || b.outline().bottom() <= a.head().y();
    }

    private static House house(String id, Bay... bays) {
        return new House(new HouseId(id), "House " + id, List.of(bays));
    }

    private static Board board(List<House> houses) {
        List<HouseView> views = houses.stream()
                .map(h -> new HouseView(
                        h,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of()))
                .toList();
        Instant at = Instant.parse("2027-05-11T07:40:00Z");
        return new Board(at, "S", ZoneOffset.UTC, views, List.of(), List.of(), List.of(), Optional.empty());
    }
}
