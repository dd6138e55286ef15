package bagward.message;

import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.mould.RiskBand;
import bagward.pollen.OutlookWords;
import bagward.pollen.PollenReport;
import bagward.station.HouseId;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What a day asks for: bags to take off, heads to look at, wet bags, pollen, and alarms that nobody has seen. */
final class TodayList {
    private TodayList() {}

    /**
     * The list; empty if no bag is on and nothing calls.
     *
     * @param pollen the newest report of each house
     */
    static String text(Board board, Map<HouseId, PollenReport> pollen) {
        if (board.bags().isEmpty() && board.alarms().isEmpty()) {
            return "";
        }
        LocalDate today = ListWords.date(board, board.at());
        List<BagView> due = bags(board, bag -> !ListWords.date(board, bag.due()).isAfter(today));
        List<BagView> young = bags(
                board, bag -> ListWords.date(board, bag.putOn()).plusDays(1).equals(today));
        List<BagView> wet = bags(board, bag -> bag.filmWet() || !bag.dampFor().isZero());
        List<BagView> risky = bags(board, bag -> bag.risk().band().compareTo(RiskBand.MODERATE) >= 0);
        String sections = ListWords.unseen(board)
                + ListWords.bags(board, "Due to come off", due, bag -> dueWords(board, bag, today))
                + ListWords.bags(
                        board,
                        "Look after one day, whether a squeezed bud hangs",
                        young,
                        bag -> "put on yesterday by " + bag.head().pollination().by())
                + ListWords.bags(board, "Damp or wet now", wet, TodayList::wetWords)
                + ListWords.bags(
                        board,
                        "Estimated mould risk moderate or high",
                        risky,
                        bag -> bag.risk().reason());
        String caution =
                due.isEmpty() && young.isEmpty() && wet.isEmpty() && risky.isEmpty() ? "" : ListWords.BAG_CAUTION;
        String bagsOn = board.bags().size() + (board.bags().size() == 1 ? " bag is on." : " bags are on.");
        return (sections.isEmpty() ? "Nothing calls today. Have a look on your round all the same.\n\n" : sections)
                + caution + pollen(board, pollen) + bagsOn + "\n";
    }

    private static String pollen(Board board, Map<HouseId, PollenReport> reports) {
        String lines = board.houses().stream()
                .map(HouseView::house)
                .flatMap(house -> Optional.ofNullable(reports.get(house.id())).stream()
                        .map(report -> "- " + house.name() + ": " + OutlookWords.inShort(report) + "\n"))
                .collect(Collectors.joining());
        return lines.isEmpty()
                ? ""
                : "Chance of clear or plentiful pollen, under the darker to the clear course of the sky:\n" + lines
                        + "\n";
    }

    private static List<BagView> bags(Board board, Predicate<BagView> which) {
        return board.bags().stream().filter(which).toList();
    }

    private static String dueWords(Board board, BagView bag, LocalDate today) {
        long late = today.toEpochDay() - ListWords.date(board, bag.due()).toEpochDay();
        return late == 0 ? "today" : late + (late == 1 ? " day late" : " days late");
    }

    private static String wetWords(BagView bag) {
        String damp = bag.dampFor().isZero()
                ? ""
                : "damp for " + Math.max(1, Math.round(bag.dampFor().toMinutes() / 60.0)) + " h";
        String film = bag.filmWet() ? "water on the film likely" : "";
        return damp.isEmpty() || film.isEmpty() ? damp + film : damp + ", " + film;
    }
}
