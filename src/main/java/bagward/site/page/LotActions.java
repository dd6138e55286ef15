package bagward.site.page;

import bagward.bag.Drying;
import bagward.bag.DryingStay;
import bagward.bag.DryingStep;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.board.Board;
import bagward.site.page.BagPage.Choice;
import bagward.site.view.LotWords;
import bagward.site.view.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What can be entered about a seed lot now.
 *
 * @param harvested whether there is a lot
 * @param hangs whether it hangs to dry
 * @param places where it can be hung, without the place where it hangs
 * @param entries what was entered and can be withdrawn, newest first
 */
public record LotActions(boolean harvested, boolean hangs, List<Choice> places, List<Entry> entries) {
    /** Sent for a place whose climate is not known. */
    public static final String ELSEWHERE = "elsewhere";

    /** Copies the lists. */
    public LotActions {
        places = List.copyOf(places);
        entries = List.copyOf(entries);
    }

    /**
     * An entry that counts.
     *
     * @param step which step
     * @param entered the time it was made for
     * @param text in words
     */
    public record Entry(String step, String entered, String text) {}

    /** What can be entered about a head's lot at the time of a board. */
    public static LotActions of(Head head, Board board) {
        boolean harvested = head.stateAt(board.at()) == HeadState.HARVESTED;
        String here = head.drying().at(board.at()).map(LotActions::value).orElse("");
        return new LotActions(
                harvested,
                !here.isEmpty(),
                harvested
                        ? places(board).stream()
                                .filter(place -> !place.value().equals(here))
                                .toList()
                        : List.of(),
                entries(head.drying(), board));
    }

    private static List<Choice> places(Board board) {
        List<Choice> places = new ArrayList<>();
        board.drying()
                .forEach(view -> places.add(
                        new Choice(view.house().id().value(), view.house().name())));
        places.add(new Choice(ELSEWHERE, "elsewhere, climate not known"));
        return places;
    }

    private static String value(DryingStay stay) {
        return stay.house().map(Object::toString).orElse(ELSEWHERE);
    }

    private static List<Entry> entries(Drying drying, Board board) {
        SortedMap<Instant, Entry> byTime = new TreeMap<>(Comparator.reverseOrder());
        drying.stays()
                .forEach(stay -> byTime.put(
                        stay.from(),
                        entry(DryingStep.HUNG, stay.from(), "hung to dry, " + LotWords.place(stay, board), board)));
        drying.packings()
                .forEach(packing -> byTime.put(packing.at(), entry(DryingStep.PACKED, packing.at(), "packed", board)));
        return List.copyOf(byTime.values());
    }

    private static Entry entry(DryingStep step, Instant at, String what, Board board) {
        return new Entry(step.name(), at.toString(), what + ", " + Words.dayAndClock(at, board.zone()));
    }
}
