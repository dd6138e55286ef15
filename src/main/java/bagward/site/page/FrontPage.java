package bagward.site.page;

import bagward.board.Board;
import bagward.site.plan.Plan;
import bagward.site.plan.Sheet;
import bagward.site.view.DryingFacts;
import bagward.site.view.Fact;
import bagward.site.view.Round;
import bagward.site.view.Tonight;
import bagward.site.view.Words;
import java.util.List;
import java.util.Optional;

/**
 * The start for desk and phone: what to do now, and the bench plan.
 *
 * @param round what to do now
 * @param desk the plan for wide pages
 * @param phone the plan for narrow pages
 * @param tonight what is to be expected in each house
 * @param pollen outlook of pollen, a line a house; empty soon after a start
 * @param drying places in which seed dries
 * @param bags how many bags are on, in words
 */
public record FrontPage(
        Round round,
        Plan desk,
        Plan phone,
        List<Evening> tonight,
        List<Fact> pollen,
        List<SeedPlace> drying,
        String bags) {
    /** Copies the lists. */
    public FrontPage {
        tonight = List.copyOf(tonight);
        pollen = List.copyOf(pollen);
        drying = List.copyOf(drying);
    }

    /**
     * A place in which seed dries.
     *
     * @param name as people call it
     * @param facts its air, and what it does to seed
     */
    public record SeedPlace(String name, List<Fact> facts) {}

    /**
     * A house tonight.
     *
     * @param house in words
     * @param hours hour by hour; empty without an outlook
     */
    public record Evening(Tonight.House house, Optional<NightHours> hours) {}

    private static final int MOST_LINES = 12;

    /**
     * The page of a board and the outlook of pollen.
     *
     * @param dampLimit limit line of the humidity, %RH
     */
    public static FrontPage of(Board board, double dampLimit, List<Fact> pollen) {
        return new FrontPage(
                Round.of(board, MOST_LINES),
                Plan.of(board, Sheet.DESK),
                Plan.of(board, Sheet.PHONE),
                board.houses().stream()
                        .map(house -> new Evening(Tonight.of(board, house), NightHours.of(board, house, dampLimit)))
                        .toList(),
                pollen,
                board.drying().stream()
                        .map(view -> new SeedPlace(view.house().name(), DryingFacts.of(view, board.zone())))
                        .toList(),
                Words.count(board.bags().size(), "bag on", "bags on"));
    }
}
