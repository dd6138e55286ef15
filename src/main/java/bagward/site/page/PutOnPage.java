package bagward.site.page;

import bagward.board.Board;
import bagward.board.HouseView;
import bagward.site.form.Entered;
import bagward.site.page.BagPage.Choice;
import bagward.station.House;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The form for a bag that was put on.
 *
 * @param houses bays to choose from, by house
 * @param materials bags to choose from
 * @param crops crops to choose from
 * @param lines names of lines that were used before
 * @param entered what was typed
 */
public record PutOnPage(
        List<HouseBays> houses, List<Choice> materials, List<Choice> crops, List<String> lines, Entered entered) {
    /**
     * Bays of a house.
     *
     * @param name of the house
     * @param bays its bays, with their free spots
     */
    public record HouseBays(String name, List<Choice> bays) {}

    /** The form for a board. */
    public static PutOnPage of(
            Board board, List<Choice> materials, List<Choice> crops, List<String> lines, Entered entered) {
        List<HouseBays> houses =
                board.houses().stream().map(h -> bays(board, h)).toList();
        return new PutOnPage(houses, materials, crops, lines, entered);
    }

    private static HouseBays bays(Board board, HouseView view) {
        House house = view.house();
        List<Choice> bays = new ArrayList<>();
        house.bays().forEach(bay -> {
            Set<Integer> taken = board.bags().stream()
                    .map(b -> b.head().spot())
                    .filter(s -> s.house().equals(house.id()) && s.bay().equals(bay.id()))
                    .map(s -> s.number())
                    .collect(Collectors.toSet());
            bays.add(new Choice(house.id() + "/" + bay.id(), bay.name() + ", free: " + free(bay.spots(), taken)));
        });
        return new HouseBays(house.name(), bays);
    }

    /** Free numbers in short: "1 to 4, 7". */
    static String free(int spots, Set<Integer> taken) {
        Set<Integer> free = new TreeSet<>();
        for (int i = 1; i <= spots; i++) {
            if (!taken.contains(i)) {
                free.add(i);
            }
        }
        List<String> runs = new ArrayList<>();
        for (int first : free) {
            if (free.contains(first - 1)) {
                continue;
            }
            int last = first;
            while (free.contains(last + 1)) {
                last++;
            }
            runs.add(first == last ? Integer.toString(first) : first + " to " + last);
        }
        return runs.isEmpty() ? "none" : String.join(", ", runs);
    }
}
