package bagward.site.view;

import bagward.board.AlarmView;
import bagward.board.BagView;
import bagward.board.Board;
import java.util.List;

/**
 * A bag that its house calls for.
 *
 * @param tag of its head
 * @param place bay and spot
 * @param temperature in it, with unit, origin and interval
 * @param humidity in it, with unit, origin and interval
 */
public record ConcernedBag(String tag, String place, String temperature, String humidity) {
    /** The bags of an alarm, in walking order; none if it is about its subject alone. */
    public static List<ConcernedBag> of(Board board, AlarmView alarm) {
        return alarm.bags().stream()
                .flatMap(tag -> board.find(tag).stream())
                .map(bag -> of(board, bag))
                .toList();
    }

    private static ConcernedBag of(Board board, BagView bag) {
        return new ConcernedBag(
                bag.head().tag().value(),
                Places.spot(board, bag.head().spot()),
                Figures.temperatureInFull(bag.temperature()),
                Figures.humidityInFull(bag.humidity()));
    }
}
