package bagward.site.view;

import bagward.board.Board;
import bagward.board.PlaceNames;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;

/** Names of places as pages write them. */
public final class Places {
    private Places() {}

    /** Name of a house; its short name if the board does not know it. */
    public static String house(Board board, HouseId id) {
        return PlaceNames.house(board, id);
    }

    /** Name of a bay; its short name if the board does not know it. */
    public static String bay(Board board, HouseId house, BayId id) {
        return PlaceNames.bay(board, house, id);
    }

    /** Bay and number of a spot: "Long bench · 14". */
    public static String spot(Board board, Spot spot) {
        return bay(board, spot.house(), spot.bay()) + " · " + spot.number();
    }
}
