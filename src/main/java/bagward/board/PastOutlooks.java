package bagward.board;

import bagward.bag.NightOutlook;
import bagward.bag.Outlook;
import bagward.climate.Climate;
import bagward.climate.TimeGrid;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The outlooks of a season, each made when the running station would have made it: ten minutes past the full hour, and
 * where that gave none, at the mark that asks. Houses are put on the grid of outlooks once. Safe for use by several threads.
 */
final class PastOutlooks {
    private static final Duration ARRIVED = Duration.ofMinutes(10);

    private final BoardInputs season;
    private final Instant from;
    private final Map<HouseId, Climate> climates = new HashMap<>();
    private final Map<Key, Outlook> outlooks = new HashMap<>();

    /** @param from none is asked for before it */
    PastOutlooks(BoardInputs season, Instant from) {
        this.season = season;
        this.from = from.minus(2, ChronoUnit.HOURS);
    }

    /** The outlook of a house at a mark of ten minutes. */
    Outlook at(HouseId house, Instant mark) {
        Instant hour = mark.minus(ARRIVED).truncatedTo(ChronoUnit.HOURS);
        Outlook made = made(house, hour.plus(ARRIVED));
        return made instanceof Outlook.Night || mark.equals(hour.plus(ARRIVED)) ? made : made(house, mark);
    }

    /** The first mark after one at which there may be another. */
    Instant next(Instant mark) {
        Instant hour = mark.truncatedTo(ChronoUnit.HOURS);
        Instant arrived = hour.plus(ARRIVED);
        return mark.isBefore(arrived) ? arrived : hour.plus(1, ChronoUnit.HOURS);
    }

    private synchronized Outlook made(HouseId house, Instant at) {
        return outlooks.computeIfAbsent(new Key(house, at), key -> make(house, at));
    }

    private Outlook make(HouseId house, Instant at) {
        Climate all = climates.computeIfAbsent(house, this::climate);
        TimeGrid grid = all.grid();
        TimeGrid wanted = Lessons.outlookGrid(at, at);
        int first = Math.max(0, grid.indexOf(wanted.start()));
        int end = Math.min(grid.size(), grid.indexOf(wanted.end()));
        return NightOutlook.of(all.part(first, end), season.station().zone(), at);
    }

    private Climate climate(HouseId house) {
        TimeGrid grid = Lessons.outlookGrid(from, season.now());
        return PlaceClimates.climate(season.station(), house, Optional.empty(), season.readings(), grid);
    }

    private record Key(HouseId house, Instant at) {}
}
