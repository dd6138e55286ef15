package bagward.site.view;

import bagward.board.Board;
import bagward.board.HouseView;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.util.Optional;

/** Names of places as people call them. */
public final class Places {
    private Places() {}

    /** Name of a house; its short name if the board does not know it. */
    public static String house(Board board, HouseId id) {
        return find(board, id).map(House::name).orElse(id.value());
    }

    /** Name of a bay; its short name if the board does not know it. */
    public static String bay(Board board, HouseId house, BayId id) {
        return find(board, house).flatMap(h -> h.findBay(id)).map(Bay::name).orElse(id.value());
    }

    /** Bay and number of a spot: "Long bench · 14". */
    public static String spot(Board board, Spot spot) {
        return bay(board, spot.house(), spot.bay()) + " · " + spot.number();
    }

    private static Optional<House> find(Board board, HouseId id) {
        return board.houses().stream()
                .map(HouseView::house)
                .filter(h -> h.id().equals(id))
                .findFirst();
    }
}
